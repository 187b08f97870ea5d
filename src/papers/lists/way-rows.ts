import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan, WayEntry } from '../../core/plan-shape.ts';
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

const insideWords = ({ kept, lines }: WayEntry): string => {
  const parts = [
    ...(kept.length === 0 ? [] : [printCount(kept.length, 'cable that stays', 'cables that stay')]),
    ...(lines.length === 0 ? [] : [`${lines.length} new`]),
  ];
  return parts.length === 0 ? 'nothing in it' : parts.join(' and ');
};

/** The ways with a bore, fullest first; `fitsAtMm` is named where something does not go in. */
export const wayRows = (boat: Pick<Boat, 'ways' | 'places'>, { ways }: Pick<Plan, 'ways'>): WayRow[] => {
  const names = new Map(boat.places.map(({ id, name }) => [id, name]));
  const ends = new Map(boat.ways.map((way) => [way.id, way.ends]));
  return ways
    .map((way): WayRow => {
      const [a = '', b = ''] = ends.get(way.id) ?? [];
      const bore = way.fitsAtMm === undefined ? '' : `, ${Math.ceil(way.fitsAtMm)} mm would take all`;
      return {
        key: way.id,
        what: `${names.get(a) ?? a} to ${names.get(b) ?? b}`,
        fact: `${printPct(way.fillPct)} of ${way.boreMm} mm, ${insideWords(way)}: ${verdictWords[way.verdict]}${bore}`,
        fillPct: way.fillPct,
        isOver: way.verdict === 'refused' || way.verdict === 'doubt',
        lights: [way.id, a, b],
      };
    })
    .sort((one, other) => other.fillPct - one.fillPct || byCodeUnit(one.key, other.key));
};
