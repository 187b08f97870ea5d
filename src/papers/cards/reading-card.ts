import type { ReadingId } from '../../core/facts/reading-ids.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import type { Plan, ReadingEntry } from '../../core/plan-shape.ts';
import { breakLights } from './break-lights.ts';
import type { CardBoat } from './card-boat.ts';
import { needWords } from './need-words.ts';
import { type ReadingStop, readingTree } from './reading-tree.ts';
import { wayLights } from './way-lights.ts';

/** A reading as it is asked for: with its number where the need has one. */
export interface ReadingKey {
  readonly reading: ReadingId;
  readonly instance?: number;
}

/** A screen that asks for the reading, and how that stands. */
export interface ReadingEnd {
  readonly at: string;
  readonly name: string;
  readonly fact: string;
  /** ids that light its way, or the place where the way breaks */
  readonly lights: readonly string[];
  readonly backups: readonly { readonly says: string; readonly lights: readonly string[] }[];
  readonly whyNot?: NonNullable<ReadingEntry['whyNot']>;
}

/** The way of one reading from where it is made to every screen that wants it. */
export interface ReadingCard {
  readonly name: string;
  /** "2 of 3 screens that want it have it" */
  readonly stands: string;
  readonly sources: readonly ReadingStop[];
  readonly ends: readonly ReadingEnd[];
  readonly before: string;
  readonly lights: readonly string[];
}

const isOf =
  ({ reading, instance }: ReadingKey) =>
  (entry: ReadingKey): boolean =>
    entry.reading === reading && entry.instance === instance;

const unitName = (index: CardBoat, id: string): string => index.kit.get(id)?.name ?? id;

const unitOf = (port: string): string => port.slice(0, port.indexOf('.'));

const wayWords = (index: CardBoat, ports: readonly string[]): string =>
  [...new Set(ports.map(unitOf))].map((unit) => unitName(index, unit)).join(' > ');

const endOf = (index: CardBoat, plan: Plan, entry: ReadingEntry): ReadingEnd => ({
  at: entry.at,
  name: unitName(index, entry.at),
  fact: needWords(entry),
  lights: entry.arrives ? wayLights(index, plan, entry.by) : breakLights(entry),
  backups: entry.backups.map((ports) => ({
    says: wayWords(index, ports),
    lights: wayLights(index, plan, ports),
  })),
  ...(entry.whyNot === undefined ? {} : { whyNot: entry.whyNot }),
});

const beforeWords = (index: CardBoat, plan: Plan, key: ReadingKey): string => {
  const had = plan.before.filter(
    (entry) => entry.reading === key.reading && (key.instance === undefined || entry.instance === key.instance),
  );
  const units = [...new Set(had.map(({ at }) => unitName(index, at)))];
  return units.length === 0 ? 'Nothing aboard had it before.' : `Before, it was at: ${units.join('; ')}.`;
};

/** The way of one reading; undefined where nothing asks for it. */
export const readingCard = (index: CardBoat, plan: Plan, key: ReadingKey): ReadingCard | undefined => {
  const entries = plan.readings.filter(isOf(key));
  if (entries.length === 0) return undefined;
  const arriving = entries.filter(({ arrives }) => arrives);
  const ends = entries.map((entry) => endOf(index, plan, entry));
  return {
    name: readingName(key),
    stands: `${arriving.length} of ${entries.length} units that want it have it`,
    sources: readingTree(index, plan, arriving),
    ends,
    before: beforeWords(index, plan, key),
    lights: [...new Set(ends.flatMap(({ lights }) => lights))],
  };
};
