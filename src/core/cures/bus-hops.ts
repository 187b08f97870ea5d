import type { Problem } from '../backbone/problem.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { readingName } from '../facts/reading-words.ts';
import type { Arrival } from '../readings/arrivals.ts';
import type { BusHop } from './bus-changes.ts';

/** What goes over a bus from one unit to another on the way of each reading that is needed and arrives. */
export const busHops = (readings: readonly Arrival[], { devices }: Pick<Problem, 'devices'>): BusHop[] => {
  const onBus = new Set(devices.map(({ id }) => id));
  return readings.flatMap(({ reading, by }) =>
    by.flatMap((from, at) => {
      const to = by[at + 1];
      return to !== undefined && onBus.has(from) && onBus.has(to) ? [{ reading, from, to }] : [];
    }),
  );
};

const namesOf = (readings: readonly Arrival[]): string[] =>
  [...new Set(readings.map(({ reading }) => readingName({ reading, instance: undefined })))].sort(byCodeUnit);

/** The readings that cross a bridge, each way, as a sentence: "Over it go depth, heading to the second bus, and rudder angle back." */
export const crossingWords = (readings: readonly Arrival[], bridge: string): string => {
  const over = (first: string, second: string): string[] =>
    namesOf(
      readings.filter(({ by }) =>
        by.some((port, at) => port === `${bridge}.${first}` && by[at + 1] === `${bridge}.${second}`),
      ),
    );
  const [there, back] = [over('side-a', 'side-b'), over('side-b', 'side-a')];
  const parts = [
    ...(there.length === 0 ? [] : [`${there.join(', ')} to the second bus`]),
    ...(back.length === 0 ? [] : [`${back.join(', ')} to the first`]),
  ];
  if (parts.length === 0) return 'Nothing that is needed crosses it.';
  return `Over it ${[...there, ...back].length === 1 ? 'goes' : 'go'} ${parts.join(', and ')}.`;
};
