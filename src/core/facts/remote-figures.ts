import type { ReadingId } from './reading-ids.ts';
import type { SourceKey } from './sources.ts';

/** What can be commanded from afar, in the order of how much it matters. */
export const commandIds = ['pilot', 'engine', 'switching'] as const;
export type CommandId = (typeof commandIds)[number];

/** One order: the reading that carries it and, where only one message is an order and others only report, that message. */
export interface RemoteOrder {
  readonly what: CommandId;
  readonly reading: ReadingId;
  readonly pgn?: number;
  readonly source: SourceKey;
}

/** What a stranger could send: a course, a route to steer by, a switch to throw, an order to an engine. */
export const remoteOrders: readonly RemoteOrder[] = [
  { what: 'pilot', reading: 'pilot-command', source: 'practice-remote' },
  { what: 'pilot', reading: 'route', source: 'practice-remote' },
  { what: 'pilot', reading: 'cross-track', source: 'practice-remote' },
  { what: 'engine', reading: 'engine', source: 'practice-remote' },
  { what: 'engine', reading: 'transmission', source: 'practice-remote' },
  // 127501 reports how switches stand, 127502 throws them.
  { what: 'switching', reading: 'switching', pgn: 127_502, source: 'practice-remote' },
];

/** Kinds that pass on whatever comes in, unless they are set to listen only (common practice). */
export const convertingKinds: ReadonlySet<string> = new Set(['converter', 'gateway', 'multiplexer']);

/** Kinds by which the boat is reached from ashore. */
export const outsideKinds: ReadonlyMap<string, 'cellular' | 'satellite'> = new Map([
  ['cellular-hub', 'cellular'],
  ['satellite-terminal', 'satellite'],
]);

/** Kinds that are carried about, and lost. */
export const carriedKinds: ReadonlySet<string> = new Set(['phone', 'tablet']);
