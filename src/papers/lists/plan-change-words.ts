import type { Boat } from '../../core/boat/boat-schema.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import type { ReadingEntry } from '../../core/plan-shape.ts';
import type { PlanChange } from './plan-change.ts';
import { printCount } from './print-figure.ts';

const namedAtMost = 3;

const findingWords = ({ gone, came, altered }: PlanChange): string => {
  const parts = [
    ...(gone.length === 0 ? [] : [`${printCount(gone.length, 'finding')} less`]),
    ...(came.length === 0 ? [] : [gone.length === 0 ? printCount(came.length, 'new finding') : `${came.length} new`]),
    ...(altered.length === 0
      ? []
      : [
          gone.length + came.length === 0
            ? `${printCount(altered.length, 'finding')} changed`
            : `${altered.length} changed`,
        ]),
  ];
  return parts.length === 0 ? 'The findings stay the same' : parts.join(', ');
};

const needWords = (
  entries: readonly ReadingEntry[],
  { one, many, names }: { one: string; many: string; names: ReadonlyMap<string, string> },
): string[] => {
  if (entries.length === 0) return [];
  if (entries.length > namedAtMost) return [`${entries.length} readings ${many}`];
  const what = entries.map((entry) => `${readingName(entry)} at ${names.get(entry.at) ?? entry.at}`);
  return [`${what.join(', ')} ${entries.length === 1 ? one : many}`];
};

const asSentence = (words: string): string => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}.`;

/**
 * A change of plan in a few sentences. `boat` is the boat after it; a unit that is gone is called by its id.
 *
 * @example "3 findings less, 1 new. Depth at helm display arrives now."
 */
export const planChangeWords = (change: PlanChange, boat: Boat): string => {
  const names = new Map(boat.kit.map((unit) => [unit.id, unit.name]));
  return [
    findingWords(change),
    ...needWords(change.gained, { one: 'arrives now', many: 'arrive now', names }),
    ...needWords(change.lost, { one: 'arrives no longer', many: 'arrive no longer', names }),
    ...needWords(change.dropped, { one: 'is no longer asked for', many: 'are no longer asked for', names }),
  ]
    .map(asSentence)
    .join(' ');
};
