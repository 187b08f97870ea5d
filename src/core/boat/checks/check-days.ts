import { dutyOfKind } from '../../facts/day-duty.ts';
import type { BoatProblem } from '../boat-problem.ts';
import type { Boat } from '../boat-schema.ts';
import { type OwnDay, standardDays } from '../own-day.ts';
import type { FilePath } from '../place-in-file.ts';
import { linkTo } from './check-links.ts';

const twice = ({ hours }: OwnDay, path: FilePath): BoatProblem[] => {
  const seen = new Set<string>();
  return hours.flatMap(({ unit, kind }, at) => {
    const what = unit === undefined ? `kind "${kind ?? ''}"` : `unit "${unit}"`;
    if (!seen.has(what)) {
      seen.add(what);
      return [];
    }
    return [
      {
        path: [...path, 'hours', at],
        says: `The hours of the ${what} are given twice.`,
        whatToDo: 'Take one of the two out.',
      },
    ];
  });
};

/** Days of the person's own that name a unit or a kind that is not there, hours given twice, or that are called like a standard day. */
export const checkDays = (boat: Boat): BoatProblem[] => {
  const units = new Set(boat.kit.map(({ id }) => id));
  const kinds = new Set([...boat.sheets.map(({ kind }) => kind), ...Object.keys(dutyOfKind)]);
  const standard = new Set<string>(standardDays);
  return (boat.days ?? []).flatMap((day, at) => {
    const path = ['days', at];
    return [
      ...(standard.has(day.id)
        ? [
            {
              path: [...path, 'id'],
              says: `"${day.id}" is a day that every boat has.`,
              whatToDo: 'Give this day another id.',
            },
          ]
        : []),
      ...day.hours.flatMap(({ unit, kind }, hoursAt) => [
        ...(unit === undefined
          ? []
          : linkTo(units, { id: unit, what: 'unit', path: [...path, 'hours', hoursAt, 'unit'] })),
        ...(kind === undefined
          ? []
          : linkTo(kinds, { id: kind, what: 'kind', path: [...path, 'hours', hoursAt, 'kind'] })),
      ]),
      ...twice(day, path),
    ];
  });
};
