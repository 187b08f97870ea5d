import type { Hears } from '../boat/sheet.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import { hearing, hearsReading } from './hearing.ts';
import type { Membership, PortNetwork, PortNode } from './port-network.ts';
import { ownSignals, type Signal, turnedSignals } from './signal.ts';

/** One port on the way of a signal, and the way it came by. */
export interface Step {
  readonly node: PortNode;
  readonly signal: Signal;
  readonly before: Step | undefined;
  /** ports passed, this one included */
  readonly length: number;
  /** some join on the way is confirmed to be understood */
  readonly confirmed: boolean;
}

/** A signal that a unit has heard, by which entries of its `hears`. */
export interface Heard extends Step {
  readonly by: readonly Hears[];
}

/** Everywhere a reading gets to. */
export interface Reach {
  /** every signal that leaves a port, own or turned, shortest way first */
  readonly sent: readonly Step[];
  /** by unit, every signal it hears, shortest way first */
  readonly heard: ReadonlyMap<string, readonly Heard[]>;
}

/** The units that make a reading out of others; see `derived.ts`. */
export type MakesItself = (node: PortNode, signal: Signal) => Signal | undefined;

/** Ways of one signal from one source out of one port that are kept; the search is exact until a boat has more. */
const waysKept = 32;

export const passes = (step: Step, node: PortNode): boolean => {
  for (let at: Step | undefined = step; at !== undefined; at = at.before) if (at.node === node) return true;
  return false;
};

/** The steps of a way, source first. */
export const stepsOf = (last: Step): Step[] => {
  const steps: Step[] = [];
  for (let at: Step | undefined = last; at !== undefined; at = at.before) steps.push(at);
  return steps.reverse();
};

const keyOf = ({ node, signal, confirmed }: Step, source: PortNode): string =>
  [
    node.id,
    signal.message,
    signal.instance,
    signal.everyMs,
    signal.reference,
    signal.withOffset,
    signal.dialect,
    signal.baud,
    confirmed,
    source.id,
  ].join('|');

const next = (before: Step, node: PortNode, more: Partial<Pick<Step, 'signal' | 'confirmed'>> = {}): Step => ({
  node,
  signal: more.signal ?? before.signal,
  before,
  length: before.length + 1,
  confirmed: before.confirmed || more.confirmed === true,
});

/** One forward search; kept as a closure because its queue, its results and its memory belong together. */
const search = (reading: ReadingId) => {
  const sent: Step[] = [];
  const heard = new Map<string, Heard[]>();
  const queue: Step[][] = [];
  const kept = new Map<string, Step[]>();
  const interested = new Map<Membership['net'], readonly Membership[]>();

  const listenersOn = (net: Membership['net']): readonly Membership[] => {
    const known = interested.get(net);
    if (known !== undefined) return known;
    const found = net.listeners.filter(({ node }) => node.group.length > 0 || hearsReading(node, reading));
    interested.set(net, found);
    return found;
  };

  // A way is dropped when a shorter one of the same signal from the same source has passed only ports this one passed
  // too: whatever the longer can still reach, the shorter can.
  const send = (step: Step): void => {
    const steps = stepsOf(step);
    const key = keyOf(step, steps[0]?.node ?? step.node);
    const ways = kept.get(key) ?? [];
    if (ways.length >= waysKept || ways.some((way) => stepsOf(way).every((port) => passes(step, port.node)))) return;
    kept.set(key, [...ways, step]);
    const bucket = queue[step.length] ?? [];
    queue[step.length] = bucket;
    bucket.push(step);
  };

  const turnOn = (step: Heard): void => {
    for (const { turn, to } of step.node.turnsFrom) {
      if (passes(step, to)) continue;
      for (const carry of turn.carries)
        for (const signal of turnedSignals(to, carry, step.signal)) send(next(step, to, { signal }));
    }
  };

  const hear = (step: Step): void => {
    const by = hearing(step.node, step.signal, step.confirmed);
    if (typeof by === 'string') return;
    const taken = { ...step, by };
    const list = heard.get(step.node.kit) ?? [];
    heard.set(step.node.kit, list);
    list.push(taken);
    turnOn(taken);
  };

  const arriveAt = (step: Step): void => {
    hear(step);
    for (const peer of step.node.group) {
      if (passes(step, peer)) continue;
      const inside = next(step, peer);
      hear(inside);
      send(inside);
    }
  };

  const leave = (step: Step): void => {
    sent.push(step);
    for (const own of step.node.memberships) {
      if (!own.talks) continue;
      for (const { node, confirmed } of listenersOn(own.net))
        if (!passes(step, node)) arriveAt(next(step, node, { confirmed: own.confirmed || confirmed }));
    }
    const cameInside = step.before?.node.group.includes(step.node) === true;
    if (!cameInside) for (const peer of step.node.group) if (!passes(step, peer)) send(next(step, peer));
  };

  const run = (): Reach => {
    for (let length = 1; length < queue.length; length += 1) for (const step of queue[length] ?? []) leave(step);
    for (const list of heard.values()) list.sort((a, b) => a.length - b.length);
    return { sent, heard };
  };
  return { send, run };
};

/**
 * Follows a reading forward from every port that says it, by the rule for converters: a turn passes on only what its
 * port hears, and no way comes back to a port it has passed. Pure.
 */
export const reachOf = ({ nodes }: PortNetwork, reading: ReadingId, makes: MakesItself): Reach => {
  const { send, run } = search(reading);
  for (const node of nodes.values())
    for (const own of ownSignals(node, reading)) {
      const signal = makes(node, own);
      if (signal !== undefined) send({ node, signal, before: undefined, length: 1, confirmed: false });
    }
  return run();
};
