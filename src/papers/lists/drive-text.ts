import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { steeringCautions } from '../power/caution-words.ts';
import { type DrivePoint, driveRows, steeringRows } from './drive-rows.ts';
import { keepUnits } from './print-figure.ts';

const width = 80;

const lines = (words: string, lead: string): string[] => textLines(keepUnits(words), { width, lead });

/** What the plan's text says of pilots: each pair in a line, which output would do it, and what frees the helm where one steers. */
export const driveText = (boat: Boat, plan: Plan): string[] => {
  if (plan.drives.length === 0) return [];
  const index = cardBoat(boat);
  return [
    'STEERING',
    ...driveRows(index, plan).flatMap(({ what, fact, instead }) => [
      ...lines(`${what}: ${fact}.`, '- '),
      ...(instead === undefined ? [] : lines(instead, '  ')),
    ]),
    ...steeringRows(index, plan).flatMap(({ what, fact }) => lines(`${what}: ${fact}.`, '- ')),
  ];
};

const pointWords = ({ what, computer, drive, verdict }: DrivePoint): string => {
  const sides = [computer === '' ? [] : `computer ${computer}`, drive === '' ? [] : `drive ${drive}`].flat();
  return `${what}: ${[...sides, verdict].join('; ')}.`;
};

/** Computer against drive point by point as text of 80 columns, the cautions first. */
export const drivePaper = (boat: Boat, plan: Plan): string => {
  const index = cardBoat(boat);
  return `${[
    `STEERING, ${boat.name}`,
    ...(plan.drives.length === 0 ? ['No pilot drive is aboard.'] : []),
    ...steeringCautions(plan).flatMap(({ title, says, decides }) =>
      lines(`${title}. ${says}${decides === undefined ? '' : ` Decided by ${decides}.`}`, ''),
    ),
    ...driveRows(index, plan).flatMap(({ what, points, instead }) => [
      '',
      ...lines(what, ''),
      ...points.flatMap((point) => lines(pointWords(point), '- ')),
      ...(instead === undefined ? [] : lines(instead, '  ')),
    ]),
    ...(plan.steering.length === 0 ? [] : ['', 'Where she is steered from']),
    ...steeringRows(index, plan).flatMap(({ what, fact }) => lines(`${what}: ${fact}.`, '- ')),
  ].join('\n')}\n`;
};
