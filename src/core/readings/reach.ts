import type { Hears } from '../boat/sheet.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import { hearing } from './hearing.ts';
import type { Membership, PortNetwork, PortNode } from './port-network.ts';
import { ownSignals, type Signal, signalKey, turnedSignals } from './signal.ts';

/** One port on the way of a signal, and the way it came by. */
export interface Step {
  readonly node: PortNode;
  readonly signal: Signal;
  readonly before: Step | undefined;
  /** port where the way begins */
  readonly source: PortNode;
  /** ports passed, this one included */
  readonly length: number;
  /** some join on the way is confirmed to be understood */
  readonly confirmed: boolean;
}

/** The last step of a way into a unit, and the entries of its `hears` that take the signal in. */
export interface Heard {
  readonly step: Step;
  readonly by: readonly Hears[];
}

/** Everywhere a reading gets to. */
export interface Reach {
  /** every signal that leaves a port, own or turned, shortest way first */
  readonly sent: readonly Step[];
  /** by unit, every signal it hears */
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

/** Whether a way has come by some unit. */
export const passesUnit = (step: Step, kit: string): boolean => {
  for (let at: Step | undefined = step; at !== undefined; at = at.before) if (at.node.kit === kit) return true;
  return false;
};

/** The steps of a way, source first. */
export const stepsOf = (last: Step): Step[] => {
  const steps: Step[] = [];
  for (let at: Step | undefined = last; at !== undefined; at = at.before) steps.push(at);
  return steps.reverse();
};

const keyOf = ({ node, signal, confirmed, source }: Step): string =>
  [node.id, signalKey(signal), confirmed, source.id].join('|');

const next = (before: Step, node: PortNode, signal = before.signal, confirmed = before.confirmed): Step => ({
  node,
  signal,
  before,
  source: before.source,
  length: before.length + 1,
  confirmed,
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
    const found = net.listeners.filter(({ node }) => node.group.length > 0 || node.hears.has(reading));
    interested.set(net, found);
    return found;
  };

  // A way is dropped when a shorter one of the same signal from the same source has passed only ports this one passed
  // too: whatever the longer can still reach, the shorter can.
  const isOutdone = (step: Step): boolean => {
    const key = keyOf(step);
    const ways = kept.get(key);
    if (ways === undefined) {
      kept.set(key, [step]);
      return false;
    }
    const steps = stepsOf(step);
    const isFull = ways.length >= waysKept;
    if (isFull || ways.some((way) => stepsOf(way).every((port) => steps.some(({ node }) => node === port.node))))
      return true;
    ways.push(step);
    return false;
  };

  const send = (step: Step): void => {
    if (step.before !== undefined && isOutdone(step)) return;
    const bucket = queue[step.length] ?? [];
    queue[step.length] = bucket;
    bucket.push(step);
  };

  const turnOn = (step: Step): void => {
    for (const { turn, to } of step.node.turnsFrom) {
      if (passes(step, to)) continue;
      for (const carry of turn.carries)
        for (const signal of turnedSignals(to, carry, step.signal)) send(next(step, to, signal));
    }
  };

  const hear = (step: Step): void => {
    const by = hearing(step.node, step.signal, step.confirmed);
    if (typeof by === 'string') return;
    const { kit } = step.node;
    const list = heard.get(kit);
    if (list === undefined) heard.set(kit, [{ step, by }]);
    else list.push({ step, by });
    turnOn(step);
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
        if (!passes(step, node)) arriveAt(next(step, node, step.signal, step.confirmed || own.confirmed || confirmed));
    }
    const cameInside = step.before?.node.group.includes(step.node) === true;
    if (!cameInside) for (const peer of step.node.group) if (!passes(step, peer)) send(next(step, peer));
  };

  const run = (): Reach => {
    for (let length = 1; length < queue.length; length += 1) for (const step of queue[length] ?? []) leave(step);
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
      if (signal !== undefined) send({ node, signal, before: undefined, source: node, length: 1, confirmed: false });
    }
  return run();
};
