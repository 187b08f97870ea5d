import type { LiveReading, LiveSnapshot } from '../../../../../core/proof/live/live-snapshot.ts';
import { words } from './words.ts';

/** Who says a reading, in words: the unit of the plan, else what is known of the sender. */
export const whoSays = (
  snapshot: LiveSnapshot,
  { unit, sender }: LiveReading,
  names: ReadonlyMap<string, string>,
): string => {
  if (unit !== undefined) return names.get(unit) ?? unit;
  const of = snapshot.senders[sender];
  if (of?.talker !== undefined) return words.talker(of.talker);
  return of?.address === undefined ? words.nobody : words.address(of.address);
};
