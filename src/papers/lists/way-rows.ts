import type { Boat } from '../../core/boat/boat-schema.ts';
import type { PassageEntry, Plan, WayEntry } from '../../core/plan-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import { printCount, printPct } from './print-figure.ts';

/** One way with a bore: how full it is when the work is done, in words and as a share for a gauge. */
export interface WayRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  readonly fillPct: number;
  readonly isOver: boolean;
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
}

const verdictWords: Readonly<Record<WayEntry['verdict'], string>> = {
  fits: 'fits',
  advice: 'fits, a hard pull',
  doubt: 'to be tried before buying',
  refused: 'does not go in',
};

const takenWords = {
  'fit-plug': 'goes in with a plug fitted behind it',
  'wider-hole': 'is to be widened',
} as const;

/** What is made of a fill; where only a plug is in the way, what the plan counts on. */
const verdictOf = ({ verdict, reasons }: WayEntry, passages: readonly PassageEntry[]): string => {
  const taken = [...new Set(passages.map(({ takes }) => takes))];
  const isPlugOnly = verdict === 'refused' && reasons.every((reason) => reason === 'plug');
  const words = taken.flatMap((does) => (does === undefined || does === 'other-way' ? [] : takenWords[does]));
  return isPlugOnly && words.length > 0 && words.length === taken.length ? words.join(' or ') : verdictWords[verdict];
};

const insideWords = ({ kept, lines }: WayEntry): string => {
  const parts = [
    ...(kept.length === 0 ? [] : [printCount(kept.length, 'cable that stays', 'cables that stay')]),
    ...(lines.length === 0 ? [] : [`${lines.length} new`]),
  ];
  return parts.length === 0 ? 'nothing in it' : parts.join(' and ');
};

/** The ways with a bore, fullest first; `fitsAtMm` is named where something does not go in. */
export const wayRows = (
  boat: Pick<Boat, 'ways' | 'places'>,
  { ways, passages }: Pick<Plan, 'ways' | 'passages'>,
): WayRow[] => {
  const names = new Map(boat.places.map(({ id, name }) => [id, name]));
  const ends = new Map(boat.ways.map((way) => [way.id, way.ends]));
  // A line that is led another way is no longer in this one.
  const through = passages.filter(({ takes }) => takes !== 'other-way');
  return ways
    .map((way): WayRow => {
      const [a = '', b = ''] = ends.get(way.id) ?? [];
      const bore = way.fitsAtMm === undefined ? '' : `, ${Math.ceil(way.fitsAtMm)} mm would take all`;
      return {
        key: way.id,
        what: `${names.get(a) ?? a} to ${names.get(b) ?? b}`,
        fact: `${printPct(way.fillPct)} of ${way.boreMm} mm, ${insideWords(way)}: ${verdictOf(
          way,
          through.filter((passage) => passage.way === way.id),
        )}${bore}`,
        fillPct: way.fillPct,
        isOver: way.verdict === 'refused' || way.verdict === 'doubt',
        lights: [way.id, a, b],
      };
    })
    .sort((one, other) => other.fillPct - one.fillPct || byCodeUnit(one.key, other.key));
};
