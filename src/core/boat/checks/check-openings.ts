import type { BoatProblem } from '../boat-problem.ts';
import type { Opening, PlateWish } from '../opening.ts';
import type { FilePath } from '../place-in-file.ts';
import { type Known, linkTo } from './check-links.ts';

const sameWish = (a: PlateWish, b: PlateWish): boolean =>
  a.overlapMm === b.overlapMm && a.material === b.material && a.thicknessMm === b.thicknessMm;

/** What keeps an opening off the plate that another before it lies under. */
const notTogether = (one: Opening, first: Opening, path: FilePath): BoatProblem[] => {
  if (one.plate === undefined || first.plate === undefined) return [];
  const plate = one.plate.id;
  if (one.place !== first.place) {
    const says = `The plate "${plate}" is at the place "${first.place}" already.`;
    return [{ path: [...path, 'plate'], says, whatToDo: 'Give the plate of each place an id of its own.' }];
  }
  if (one.atMm === undefined || first.atMm === undefined) {
    const says = `The openings under the plate "${plate}" are not all placed.`;
    const whatToDo = 'Measure atMm of each from one mark, x to the right, y up.';
    return [{ path: [...path, 'plate'], says, whatToDo }];
  }
  if (sameWish(one.plate, first.plate)) return [];
  const says = `What is said of the plate "${plate}" differs from opening to opening.`;
  return [{ path: [...path, 'plate'], says, whatToDo: 'Say the same of it at each of its openings.' }];
};

const checkPlates = (openings: readonly Opening[]): BoatProblem[] => {
  const firsts = new Map<string, Opening>();
  return openings.flatMap((opening, at) => {
    if (opening.plate === undefined) return [];
    const first = firsts.get(opening.plate.id);
    if (first !== undefined) return notTogether(opening, first, ['openings', at]);
    firsts.set(opening.plate.id, opening);
    return [];
  });
};

const checkUnits = (openings: readonly Opening[]): BoatProblem[] => {
  const firsts = new Map<string, string>();
  return openings.flatMap(({ id, for: unit }, at) => {
    if (unit === undefined) return [];
    const first = firsts.get(unit);
    if (first === undefined) {
      firsts.set(unit, id);
      return [];
    }
    const says = `The unit "${unit}" is to come into "${first}" already.`;
    return [{ path: ['openings', at, 'for'], says, whatToDo: 'Name another unit, or leave `for` out.' }];
  });
};

/** Openings whose place or unit is nowhere, units that come into two, and plates that cannot be. */
export const checkOpenings = ({ index }: Known): BoatProblem[] => {
  const openings = index.boat.openings ?? [];
  return [
    ...openings.flatMap(({ place, for: unit }, at) => [
      ...linkTo(index.places, { id: place, what: 'place', path: ['openings', at, 'place'] }),
      ...(unit === undefined ? [] : linkTo(index.kit, { id: unit, what: 'unit', path: ['openings', at, 'for'] })),
    ]),
    ...checkUnits(openings),
    ...checkPlates(openings),
  ];
};
