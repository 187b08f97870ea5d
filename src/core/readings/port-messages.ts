import type { Hears, Port, Sends, Sheet } from '../boat/sheet.ts';
import { type MessageReading, readingsOf } from '../facts/message-readings.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import { byCodeUnit } from '../units/by-code-unit.ts';

/** One entry of a port's `sends` and what it gives of one reading. */
export interface Giving {
  readonly sent: Sends;
  readonly entry: MessageReading;
}

type Said = ReadonlySet<ReadingId>;

/**
 * Whether a message sent gives this one reading. What a message may carry but seldom does counts where the sheet says
 * so, by the bare reading beside it or by a turn; where it names one of several kinds, only that.
 */
const isGiven = (entry: MessageReading, all: readonly MessageReading[], said: Said): boolean => {
  if (entry.oneOf !== true && entry.ifSaid !== true) return true;
  if (said.has(entry.reading)) return true;
  if (entry.ifSaid === true) return false;
  return !all.some((other) => other.oneOf === true && said.has(other.reading));
};

const formKey = ({ sent: { pgn, sentence, instance, everyMs } }: Giving): string =>
  [pgn, sentence, instance, everyMs].join(' ');

const byForm = (a: Giving, b: Giving): number => byCodeUnit(formKey(a), formKey(b));

const grouped = <Value>(pairs: readonly (readonly [ReadingId, Value])[]): Map<ReadingId, Value[]> => {
  const groups = new Map<ReadingId, Value[]>();
  for (const [reading, value] of pairs) {
    const group = groups.get(reading);
    if (group === undefined) groups.set(reading, [value]);
    else group.push(value);
  }
  return groups;
};

/** The readings that some turn of a sheet brings to a port. */
export const carriedAt = (sheet: Sheet, port: Port): Said =>
  new Set(
    (sheet.turns ?? [])
      .filter((turn) => turn.toPort === port.id)
      .flatMap((turn) => turn.carries.map((carry) => carry.reading)),
  );

/** The readings that stand bare in a port's `sends`, beside its messages. */
export const bareAt = (port: Port): Said =>
  new Set((port.sends ?? []).flatMap((sent) => (sent.reading === undefined ? [] : [sent.reading])));

/** By reading, the entries of a port's `sends` that give it, in one order whatever the order of the sheet. */
export const givenAt = (port: Port, said: Said): ReadonlyMap<ReadingId, readonly Giving[]> => {
  const given = grouped(
    (port.sends ?? []).flatMap((sent) => {
      const all = readingsOf(sent);
      return all.filter((entry) => isGiven(entry, all, said)).map((entry) => [entry.reading, { sent, entry }] as const);
    }),
  );
  for (const givings of given.values()) if (givings.length > 1) givings.sort(byForm);
  return given;
};

/** By reading, the entries of a port's `hears` that can give it. */
export const heardAt = (port: Port): ReadonlyMap<ReadingId, readonly Hears[]> =>
  grouped((port.hears ?? []).flatMap((heard) => readingsOf(heard).map(({ reading }) => [reading, heard] as const)));
