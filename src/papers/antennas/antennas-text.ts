import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { keepUnits } from '../lists/print-figure.ts';
import { radarSays, rangeWords, runWords } from './aerial-words.ts';

/** What a plan’s text says of antennas: of each run what arrives and how far that reaches, of each radar what it does not see. */
export const antennasText = (boat: Boat, plan: Plan): string[] => {
  const names = indexBoat(boat);
  const nameOf = (port: string): string => names.kit.get(port.split('.')[0] ?? port)?.name ?? port;
  const runs = plan.coax.map((run) => {
    const aerial = plan.sites.find(({ unit }) => unit === run.antenna)?.aerial;
    const reach = aerial === undefined ? '' : `; ${rangeWords(aerial)}`;
    return `${nameOf(run.radio)} to ${nameOf(run.antenna)}: ${runWords(run)}${reach}.`;
  });
  const radars = plan.sites
    .filter(({ radar }) => radar !== undefined)
    .map(({ unit }) => `${nameOf(unit)}: ${radarSays(names, plan, unit).slice(0, 3).join('; ')}.`);
  const all = [...runs, ...radars];
  if (all.length === 0) return [];
  return ['ANTENNAS AND COAX', ...all.flatMap((says) => textLines(keepUnits(says), { width: 80, lead: '- ' }))];
};
