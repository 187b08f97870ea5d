import type { BoatIndex } from '../boat/boat-index.ts';
import { lengthMm, type Measure } from '../boat/measure.ts';
import type { LineEntry } from '../plan-shape.ts';
import { straightLineMm, wayLengths } from '../ways/way-lengths.ts';

/** One length of a line that somebody entered: a way it takes (each time it does), or the tail of a unit. Millimetres. */
export interface LinePart {
  /** the way, or the unit whose tail it is */
  readonly about: string;
  readonly how: Measure['how'];
  readonly mm: number;
  readonly shortestMm: number;
  readonly longestMm: number;
}

/** A line as lengths entered and what is added to them as allowances, mm. */
export interface LineParts {
  readonly parts: readonly LinePart[];
  readonly allowanceMm: number;
}

/** The length of a line with each of its parts at a length of one's choice, mm. */
export const lengthWith = ({ parts, allowanceMm }: LineParts, lengthOf: (part: LinePart) => number): number =>
  parts.reduce((sumMm, part) => sumMm + lengthOf(part), allowanceMm);

const tailPart = (index: BoatIndex, end: string): LinePart[] => {
  const unit = index.kit.get(end.split('.')[0] ?? end);
  if (unit?.tail === undefined) return [];
  const { nominalMm, shortestMm, longestMm } = lengthMm(unit.tail);
  return [{ about: unit.id, how: unit.tail.how, mm: nominalMm, shortestMm, longestMm }];
};

/** Takes lines of one boat apart; ways are measured once for all. A way is never shorter than its straight line. */
export const makeLineParts = (index: BoatIndex): ((line: LineEntry) => LineParts) => {
  const lengths = wayLengths({ ways: index.boat.ways, places: index.places });
  const wayPart = (id: string): LinePart[] => {
    const [way, length] = [index.ways.get(id), lengths.get(id)];
    const [one, other] = way?.ends.map((place) => index.places.get(place)) ?? [];
    if (way === undefined || length === undefined || one === undefined || other === undefined) return [];
    const shortestMm = Math.max(1, straightLineMm(one, other), lengthMm(way.length).shortestMm);
    return [{ about: id, how: way.length.how, mm: length.mm, shortestMm, longestMm: length.longestMm }];
  };
  return (line) => {
    const tails = line.kind === 'trunk' ? [] : [line.from, line.to].flatMap((end) => tailPart(index, end));
    const parts = [...line.ways.flatMap(wayPart), ...tails];
    const enteredMm = parts.reduce((sumMm, { mm }) => sumMm + mm, 0);
    return { parts, allowanceMm: Math.round(line.lengthM * 1000) - enteredMm };
  };
};
