import type { Boat, Need } from '../../core/boat/boat-schema.ts';
import { shortName } from '../../core/boat/short-name.ts';
import { readingName } from '../../core/facts/reading-words.ts';

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

const part = (needs: readonly Need[], before: string): string[] =>
  needs.length === 0 ? [] : [`${before} ${listed(needs.map(readingName))}`];

/**
 * Needs in one sentence a unit, musts before wishes.
 *
 * @example needsWords(boat, needs) // ['Helm display: must show position and depth; had better show wind']
 */
export const needsWords = (
  boat: Boat,
  needs: readonly Need[],
  names: ReadonlyMap<string, string> = new Map(),
): string[] => {
  const units = [...new Set(needs.map(({ at }) => at))];
  const nameOf = (id: string): string =>
    names.get(id) ?? shortName(boat.kit.find((unit) => unit.id === id)?.name ?? id);
  return units.map((unit) => {
    const own = needs.filter(({ at }) => at === unit);
    const parts = [
      ...part(
        own.filter(({ must }) => must),
        'must have',
      ),
      ...part(
        own.filter(({ must }) => !must),
        'had better have',
      ),
    ];
    return `${nameOf(unit)} ${parts.join('; ')}.`;
  });
};
