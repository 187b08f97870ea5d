import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { keepUnits } from './print-figure.ts';
import { handOverSteps, remoteRows } from './remote-rows.ts';

const width = 80;

const lines = (words: string, lead: string): string[] => textLines(keepUnits(words), { width, lead });

/** What the plan's text says of ways in, each in a line; nothing where there is none. */
export const remoteText = (boat: Boat, plan: Plan): string[] => {
  if (plan.remote.length === 0) return [];
  return [
    'REMOTE HANDS',
    ...remoteRows(indexBoat(boat), plan).flatMap(({ what, fact }) => lines(`${what}: ${fact}.`, '- ')),
  ];
};

/** The security page of the binder as text of 80 columns: ways in, what each reaches, who holds passwords, handing over. */
export const securityPaper = (boat: Boat, plan: Plan): string => {
  const index = indexBoat(boat);
  const rows = remoteRows(index, plan);
  const steps = handOverSteps(index, plan);
  return `${[
    `WHO CAN REACH WHAT, ${boat.name}`,
    ...lines('This page says who holds a password, never the password. Write none on it.', ''),
    ...(rows.length === 0 ? ['', 'No wifi and no link ashore is aboard.'] : []),
    ...rows.flatMap(({ what, points }) => [
      '',
      ...lines(what, ''),
      ...points.flatMap((point) => lines(`${point.what}: ${point.fact}.`, '- ')),
    ]),
    ...(steps.length === 0 ? [] : ['', 'WHEN SHE CHANGES HANDS, OR A FITTER HAS GONE']),
    ...steps.flatMap((step, at) => lines(step, `${at + 1}. `)),
  ].join('\n')}\n`;
};
