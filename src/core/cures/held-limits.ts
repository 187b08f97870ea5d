import type { Layout, Problem } from '../backbone/problem.ts';
import { isBeyondWarnLimits, withWarnLimits } from '../backbone/warn-limits.ts';
import type { BusEntry } from '../plan-shape.ts';

/** A bus as planned; without a layout where no trunk can be laid. */
export interface MendedBus {
  readonly problem: Problem;
  readonly layout?: Layout;
  readonly entry?: BusEntry;
}

/** The limits a bus is mended to keep: those it must, or the warn limits, with something in hand. */
export type Held = 'must' | 'warn';

/** The problem of a bus with the limits it is mended to keep. */
export const heldTo = (held: Held, problem: Problem): Problem => (held === 'must' ? problem : withWarnLimits(problem));

/** The limits a bus as planned does not keep; absent where it keeps all, or a person settled its layout. */
export const heldOf = ({ problem, layout, entry }: MendedBus): Held | undefined => {
  if (problem.devices.length === 0 || layout?.status === 'pinned') return undefined;
  if (layout === undefined || layout.status === 'infeasible') return 'must';
  return entry !== undefined && isBeyondWarnLimits(problem, entry) ? 'warn' : undefined;
};
