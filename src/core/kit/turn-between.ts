import type { Port, Sheet, Turn } from '../boat/sheet.ts';
import { readingsOf } from '../facts/message-readings.ts';
import { type ReadingId, readingIds } from '../facts/reading-ids.ts';

const readingsIn = (messages: Port['sends'] | Port['hears']): ReadonlySet<ReadingId> =>
  new Set((messages ?? []).flatMap((message) => readingsOf(message).map(({ reading }) => reading)));

/**
 * What a converter may carry from one of its ports to another, as far as the lists of its ports tell: each reading that
 * the one hears and the other sends. A person strikes out what its manual does not list. Pure.
 */
export const turnBetween = (
  { ports }: Pick<Sheet, 'ports'>,
  { fromPort, toPort }: Pick<Turn, 'fromPort' | 'toPort'>,
): Turn => {
  const heard = readingsIn(ports.find(({ id }) => id === fromPort)?.hears);
  const sent = readingsIn(ports.find(({ id }) => id === toPort)?.sends);
  const carries = readingIds
    .filter((reading) => heard.has(reading) && sent.has(reading))
    .map((reading) => ({ reading }));
  return { fromPort, toPort, carries };
};
