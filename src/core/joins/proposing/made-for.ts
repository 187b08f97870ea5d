import type { Port } from '../../boat/sheet.ts';
import { readingsOf } from '../../facts/message-readings.ts';

const readingsAt = (said: Port['sends'] | Port['hears'] = []): ReadonlySet<string> =>
  new Set(said.flatMap((one) => readingsOf(one).map(({ reading }) => reading)));

/** A bare sensor and the input made for it say much the same: all the one has, but for one reading at most, the other takes. */
export const isMadeFor = (from: Port, to: Port): boolean => {
  const [given, taken] = [readingsAt(from.sends), readingsAt(to.hears)];
  const both = [...given].filter((reading) => taken.has(reading)).length;
  return given.size + taken.size - 2 * both <= 1;
};
