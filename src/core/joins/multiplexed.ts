import { type BoatIndex, portOf } from '../boat/boat-index.ts';
import type { Sheet } from '../boat/sheet.ts';
import type { StandingJoin } from '../plan-shape.ts';
import { charsPerSecond } from './line-load.ts';

/** What reaches the inputs whose sentences one 0183 output passes on, characters a second, and the joins that bring it. */
export interface Multiplexed {
  readonly charsPerS: number;
  readonly joins: readonly { readonly id: string; readonly charsPerS: number }[];
}

/** Inputs in 0183 whose sentences a unit passes on at one of its outputs. */
const inputsOf = ({ ports, turns = [] }: Sheet, output: string): ReadonlySet<string> =>
  new Set(
    turns
      .filter(({ toPort }) => toPort === output)
      .map(({ fromPort }) => fromPort)
      .filter((id) => ports.find((port) => port.id === id)?.protocol === 'nmea0183'),
  );

/** Characters a second that a join brings to an input: all its talkers send. */
const broughtBy = (index: BoatIndex, { members }: Pick<StandingJoin, 'members'>): number =>
  members
    .filter(({ as }) => as === 'talk')
    .reduce((sum, { kit, port }) => sum + charsPerSecond(portOf(index, `${kit}.${port}`)?.sends ?? []), 0);

/** The sum of its inputs that an output of a multiplexer carries; undefined where it passes on one input or none. */
export const multiplexedAt = (
  index: BoatIndex,
  joins: readonly Pick<StandingJoin, 'id' | 'kind' | 'members'>[],
  { kit, port }: { readonly kit: string; readonly port: string },
): Multiplexed | undefined => {
  const sheet = index.sheetOf.get(kit);
  const inputs = sheet === undefined ? new Set<string>() : inputsOf(sheet, port);
  if (inputs.size < 2) return undefined;
  const bringing = joins.flatMap((join) => {
    const times = join.members.filter((one) => one.kit === kit && one.as === 'listen' && inputs.has(one.port)).length;
    if (join.kind !== 'nmea0183' || times === 0) return [];
    return [{ id: join.id, charsPerS: times * broughtBy(index, join) }];
  });
  return { charsPerS: bringing.reduce((sum, { charsPerS }) => sum + charsPerS, 0), joins: bringing };
};
