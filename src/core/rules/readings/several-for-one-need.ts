import { byCodeUnit } from '../../boat/ids.ts';
import { numberedReadings, soleReadings } from '../../facts/numbered-readings.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import { readingWords } from '../../facts/reading-words.ts';
import { chosenPrimary } from '../../readings/chosen-primary.ts';
import { type DoubledSource, doubledSources } from '../../readings/doubled.ts';
import { type MetNeed, metNeeds } from '../../readings/met-needs.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

type Ways = MetNeed['ways'][number][];

/** What a screen takes from others: its own sensor it knows from theirs. */
const fromOthers = ({ need, ways }: MetNeed): Ways => ways.filter(({ kit }) => kit[0] !== need.at);

/** Whether all ways lead through senders that share a bus and a number, which is told where the senders are. */
const isToldElsewhere = (ways: Ways, doubled: readonly DoubledSource[]): boolean =>
  doubled.some((entry) => ways.every(({ ports }) => ports.some((port) => entry.ports.includes(port))));

const sourcesOf = (ways: Ways): string[] => ways.flatMap(({ kit }) => kit.slice(0, 1));

const isOpen = (ways: Ways, reading: ReadingId, doubled: readonly DoubledSource[]): boolean => {
  const numbers = new Set(ways.map(({ signal }) => signal.instance)).size;
  const sensors = new Set(sourcesOf(ways)).size;
  if (numberedReadings.has(reading) ? numbers < 2 : sensors < 2) return false;
  return !isToldElsewhere(
    ways,
    doubled.filter((entry) => entry.reading === reading),
  );
};

/** Names of units have commas in them: more than two in a row are read by nobody. */
const screensOf = (names: readonly string[]): string =>
  names.length > 2 ? `${names.length} units` : names.join(' and for ');

/** A need that names no number takes whichever comes: the wrong engine, or a depth that jumps between two sensors. */
export const severalForOneNeed: Rule = {
  id: 'readings/several-for-one-need',
  level: 'doubt',
  title: 'Several sensors meet one need, and it does not say which counts.',
  sources: ['messages-conflicts'],
  looksAt: 'whole-plan',
  check: ({ index, reaches }) => {
    const doubled = doubledSources(reaches);
    const isAsked = (reading: ReadingId): boolean => numberedReadings.has(reading) || soleReadings.has(reading);
    const open = metNeeds(reaches, ({ reading, instance }) => instance === undefined && isAsked(reading))
      .map((met) => ({ ...met.need, ways: fromOthers(met) }))
      .filter((need) => chosenPrimary(index.boat, need) === undefined)
      .filter(({ reading, ways }) => isOpen(ways, reading, doubled));
    const sorted = (ids: readonly string[]): string[] => [...new Set(ids)].sort(byCodeUnit);
    return [...new Set(open.map(({ reading }) => reading))].map((reading) => {
      const needs = open.filter((need) => need.reading === reading);
      const screens = sorted(needs.map(({ at }) => at));
      const sources = sorted(needs.flatMap(({ ways }) => sourcesOf(ways)));
      const name = (id: string): string => unitName(index, id);
      return {
        about: [...screens, ...sources],
        apart: [reading],
        says: `${readingWords[reading]} for ${screensOf(screens.map(name))} may come from ${sources.map(name).join(', or from ')}, and no number says which. A screen takes either, and may change over on its own.`,
        measured: { value: sources.length, unit: 'sources' },
        cure: 'Say in the source plan which one counts, and choose it on each screen.',
      };
    });
  },
};
