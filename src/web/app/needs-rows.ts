import type { Boat } from '../../core/boat/boat-schema.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import type { Plan, ReadingEntry } from '../../core/plan-shape.ts';
import { printCount } from '../../papers/lists/print-figure.ts';
import type { Row } from './lit-rows.tsx';

/** The readings of one screen or radio, as the margin lists them. */
export interface NeedsGroup {
  readonly unit: string;
  readonly name: string;
  readonly rows: readonly Row[];
}

const restWords = { typical: 'by typical sheet', manual: 'by the manual', recording: 'by recording', proved: 'proved' };

/** How a reading stood before the refit; nothing where the plan does not say. */
const beforeWords = ({ arrives, seenBefore }: ReadingEntry): string[] => {
  if (seenBefore === undefined) return [];
  if (arrives) return [seenBefore ? 'as before' : 'new'];
  return seenBefore ? ['lost'] : [];
};

const factOf = (entry: ReadingEntry): string => {
  const before = beforeWords(entry);
  if (!entry.arrives) return [...before, entry.whyNot?.says ?? 'does not arrive'].join(': ');
  const backups = entry.backups.length === 0 ? [] : [printCount(entry.backups.length, 'backup')];
  return [...(entry.rests === undefined ? [] : [restWords[entry.rests]]), ...backups, ...before].join(', ');
};

/** The way of a reading lights every unit it passes, from its source to the screen. */
const lightsOf = (entry: ReadingEntry): readonly string[] => [
  ...new Set([entry.at, ...entry.by.map((port) => port.slice(0, port.indexOf('.')))]),
];

/** What is needed where, screen by screen in the order of the plan; what does not arrive comes first in each. */
export const needsGroups = ({ boat, plan }: { boat: Boat; plan: Plan }): readonly NeedsGroup[] => {
  const names = new Map(boat.kit.map((unit) => [unit.id, unit.name]));
  const units = [...new Set(plan.readings.map((entry) => entry.at))];
  return units.map((unit) => ({
    unit,
    name: names.get(unit) ?? unit,
    rows: plan.readings
      .filter((entry) => entry.at === unit)
      .sort((a, b) => Number(a.arrives) - Number(b.arrives))
      .map((entry) => ({
        key: `${entry.reading}/${entry.instance ?? ''}`,
        what: readingName(entry),
        fact: factOf(entry),
        lights: lightsOf(entry),
      })),
  }));
};
