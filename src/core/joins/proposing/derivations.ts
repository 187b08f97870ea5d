import type { Need } from '../../boat/boat-schema.ts';
import { derivedReadings } from '../../facts/derived-readings.ts';
import type { ReadingId } from '../../facts/reading-ids.ts';
import { hearing } from '../../readings/hearing.ts';
import type { Membership, PortNetwork, PortNode } from '../../readings/port-network.ts';
import { ownSignals, type Signal, signalKey, turnedSignals } from '../../readings/signal.ts';
import { shortfalls, wantedOf } from '../../readings/wanted.ts';
import { alike } from './sockets.ts';

/**
 * What follows from what, on a boat with every candidate join in place: "if this port sends this, and these joins are
 * chosen, that port hears it". Facts are numbers; those below `joins` are "this candidate is chosen".
 */
export interface Derivations {
  readonly joins: number;
  readonly facts: number;
  readonly steps: readonly Derivation[];
  /** for each need, in their order, the fact that it is met */
  readonly met: readonly number[];
}

/** One step: when all of `from` hold, `to` holds. */
export interface Derivation {
  readonly from: readonly number[];
  readonly to: number;
}

/** The candidate that a member of a net is there by; undefined where it stands anyway. */
export type CandidateOf = (member: Membership) => number | undefined;

interface Ask {
  readonly network: PortNetwork;
  readonly candidateOf: CandidateOf;
  readonly joins: number;
  readonly needs: readonly Need[];
}

/** The readings a need hangs on: its own, what those are made of, and variation, which turns one reference into another. */
export const readingsBehind = (reading: ReadingId): ReadonlySet<ReadingId> => {
  const parts = (derivedReadings.get(reading) ?? []).flatMap(({ from }) => from);
  return new Set([reading, ...parts, 'variation']);
};

interface Sent {
  readonly fact: number;
  readonly node: PortNode;
  readonly signal: Signal;
  readonly confirmed: boolean;
  readonly source: PortNode;
  /** it came to this port from a neighbour inside the unit, and so goes to none of them again */
  readonly inside: boolean;
}

/** Writes the steps down; a class because its facts, its steps and its queue belong together. */
class Writer {
  readonly #ask: Ask;
  readonly #facts = new Map<string, number>();
  readonly #steps: Derivation[] = [];
  readonly #known = new Set<string>();
  readonly #queue: Sent[] = [];
  readonly #heard = new Map<
    string,
    { readonly sent: Sent; readonly by: readonly Parameters<typeof wantedOf>[1][] }[]
  >();
  readonly #own = new Map<string, { readonly fact: number; readonly signal: Signal }[]>();

  constructor(ask: Ask) {
    this.#ask = ask;
  }

  #fact(name: string): number {
    const known = this.#facts.get(name) ?? this.#ask.joins + this.#facts.size;
    this.#facts.set(name, known);
    return known;
  }

  #step(from: readonly number[], to: number): void {
    const key = `${from.join(',')}>${to}`;
    if (this.#known.has(key)) return;
    this.#known.add(key);
    this.#steps.push({ from, to });
  }

  #has(kit: string, reading: ReadingId): number {
    return this.#fact(`has ${kit} ${reading}`);
  }

  /** The same thing said at another port; followed further the first time it is seen there. */
  #say(what: 'sent' | 'came', at: Omit<Sent, 'fact'>): Sent {
    const { node, signal, confirmed, source, inside } = at;
    const key = `${what} ${node.id} ${signalKey(signal)} ${confirmed} ${source.id} ${inside}`;
    const isNew = !this.#facts.has(key);
    const sent = { ...at, fact: this.#fact(key) };
    if (isNew && what === 'sent') this.#queue.push(sent);
    if (isNew && what === 'came') this.#arrive(sent);
    return sent;
  }

  /** What a unit says of itself: a derived reading as each of its recipes gives it, and as any where it has them all. */
  #begin(node: PortNode, own: Signal): void {
    const recipes = derivedReadings.get(own.reading);
    const start = (signal: Signal, from: readonly number[]): void => {
      const sent = this.#say('sent', { node, signal, confirmed: false, source: node, inside: false });
      this.#step(from, sent.fact);
      const list = this.#own.get(`${node.kit} ${own.reading}`) ?? [];
      this.#own.set(`${node.kit} ${own.reading}`, [...list, { fact: sent.fact, signal }]);
      this.#step([sent.fact], this.#has(node.kit, own.reading));
    };
    if (recipes === undefined) {
      start(own, []);
      return;
    }
    const needed = recipes.map(({ from }) => from.map((reading) => this.#has(node.kit, reading)));
    recipes.forEach(({ reference }, at) => {
      start(reference === undefined ? own : { ...own, reference }, needed[at] ?? []);
    });
    start(own, [...new Set(needed.flat())]);
  }

  #labels(...members: readonly Membership[]): number[] {
    return [...new Set(members.flatMap((member) => this.#ask.candidateOf(member) ?? []))];
  }

  #leave(sent: Sent): void {
    const { node, signal, source } = sent;
    for (const own of node.memberships) {
      if (!own.talks) continue;
      for (const other of own.net.listeners) {
        if (other.node === node) continue;
        const takes = other.node.group.length > 0 || other.node.hears.has(signal.reading);
        if (!takes) continue;
        const confirmed = sent.confirmed || own.confirmed || other.confirmed;
        const came = this.#say('came', { node: other.node, signal, confirmed, source, inside: false });
        this.#step([sent.fact, ...this.#labels(own, other)], came.fact);
      }
    }
    if (sent.inside) return;
    for (const peer of node.group)
      this.#step([sent.fact], this.#say('sent', { ...sent, node: peer, inside: true }).fact);
  }

  #arrive(came: Sent): void {
    this.#hear(came);
    const go = (node: PortNode): void =>
      this.#step([came.fact], this.#say('sent', { ...came, node, inside: true }).fact);
    for (const peer of came.node.group) {
      this.#hear({ ...came, node: peer });
      go(peer);
    }
    // one socket of a switch stands for all that are alike: what came in at it leaves by another that it stands for
    if (alike(came.node).length > 1) go(came.node);
  }

  #hear({ fact, node, signal, confirmed, source }: Sent): void {
    const by = hearing(node, signal, confirmed);
    if (typeof by === 'string') return;
    const key = `${node.kit} ${signal.reading}`;
    const sent = { fact, node, signal, confirmed, source, inside: false };
    this.#heard.set(key, [...(this.#heard.get(key) ?? []), { sent, by }]);
    this.#step([fact], this.#has(node.kit, signal.reading));
    for (const { turn, to } of node.turnsFrom)
      for (const carry of turn.carries)
        for (const turned of turnedSignals(to, carry, signal))
          this.#step([fact], this.#say('sent', { node: to, signal: turned, confirmed, source, inside: false }).fact);
  }

  #meet(need: Need, at: number): number {
    const met = this.#fact(`met ${at}`);
    const variation = this.#has(need.at, 'variation');
    const look = (fact: number, signal: Signal, wishes: readonly Parameters<typeof wantedOf>[1][]): void => {
      for (const wish of wishes) {
        const wanted = wantedOf(need, wish);
        if (shortfalls(signal, wanted, false).length === 0) this.#step([fact], met);
        else if (shortfalls(signal, wanted, true).length === 0) this.#step([fact, variation], met);
      }
    };
    const key = `${need.at} ${need.reading}`;
    if (need.reading !== 'chart-share')
      for (const { fact, signal } of this.#own.get(key) ?? []) look(fact, signal, [undefined]);
    for (const { sent, by } of this.#heard.get(key) ?? [])
      if (sent.source.kit !== need.at) look(sent.fact, sent.signal, by);
    return met;
  }

  write(): Derivations {
    const { network, needs, joins } = this.#ask;
    const readings = new Set(needs.flatMap(({ reading }) => [...readingsBehind(reading)]));
    for (const node of network.nodes.values())
      for (const reading of readings) for (const own of ownSignals(node, reading)) this.#begin(node, own);
    for (let sent = this.#queue.pop(); sent !== undefined; sent = this.#queue.pop()) this.#leave(sent);
    const met = needs.map((need, at) => this.#meet(need, at));
    return { joins, facts: joins + this.#facts.size, steps: this.#steps, met };
  }
}

/**
 * Everything that could follow on a boat in which all candidate joins stand, for the needs given; which of it does follow is
 * told by `follow` for the joins chosen. A way that comes back to a port it has passed is not ruled out here: whoever
 * chooses by it looks at the boat itself in the end.
 */
export const derivationsOf = (ask: Ask): Derivations => new Writer(ask).write();
