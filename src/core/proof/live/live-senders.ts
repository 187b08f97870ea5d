import { readName } from '../decode/name-field.ts';
import type { HowSure, LiveSender } from './live-snapshot.ts';
import { isOverdue, type Pace, startPace } from './pace.ts';

/** One sender while it is being heard. */
export interface HeardSender {
  readonly id: number;
  address: number | undefined;
  readonly talker: string | undefined;
  /** unit of the plan that a talker’s sentences come from, where only one can say them */
  readonly saidBy: string | undefined;
  name: string | undefined;
  lastMs: number;
  messages: number;
  /** what it sends, by message, to know its pace */
  readonly paces: Map<number | string, Pace>;
}

/** Which unit of the plan speaks from which address. */
export type KnownUnits = ReadonlyMap<number, { readonly unit: string; readonly how: HowSure }>;

/** Who speaks, followed from address to address. */
export interface LiveSenders {
  at(address: number): HeardSender;
  /** takes an address claim and gives the one that claims */
  claim(address: number, data: Uint8Array): HeardSender;
  talker(letters: string, saidBy: string | undefined): HeardSender;
  all(): readonly HeardSender[];
}

/** 254 = cannot claim, 255 = everyone: no one keeps these. */
const lastAddress = 253;
/** More senders than two full buses: damaged data; what comes after shares one. */
const mostSenders = 512;

/** Starts with nobody heard. A NAME keeps its sender wherever it moves, as its address may change with each start. */
export const startLiveSenders = (): LiveSenders => {
  const all: HeardSender[] = [];
  const byAddress = new Map<number, HeardSender>();
  const byName = new Map<string, HeardSender>();
  const byTalker = new Map<string, HeardSender>();

  const add = (of: { address?: number; talker?: string; saidBy?: string | undefined }): HeardSender => {
    const crowd = all[mostSenders - 1];
    if (crowd !== undefined) return crowd;
    const made: HeardSender = {
      id: all.length,
      address: of.address,
      talker: of.talker,
      saidBy: of.saidBy,
      name: undefined,
      lastMs: 0,
      messages: 0,
      paces: new Map(),
    };
    all.push(made);
    return made;
  };

  const at = (address: number): HeardSender => {
    const known = byAddress.get(address);
    if (known !== undefined) return known;
    const made = add({ address });
    byAddress.set(address, made);
    return made;
  };

  const move = (sender: HeardSender, address: number): void => {
    if (sender.address === address) return;
    if (sender.address !== undefined && byAddress.get(sender.address) === sender) byAddress.delete(sender.address);
    sender.address = undefined;
    if (address > lastAddress) return;
    const driven = byAddress.get(address);
    if (driven !== undefined) driven.address = undefined;
    sender.address = address;
    byAddress.set(address, sender);
  };

  return {
    at,
    claim(address, data) {
      const hex = readName(data)?.hex;
      if (hex === undefined) return at(address);
      const known = byName.get(hex);
      if (known !== undefined) {
        move(known, address);
        return known;
      }
      const here = at(address);
      const sender = here.name === undefined ? here : add({});
      sender.name = hex;
      byName.set(hex, sender);
      move(sender, address);
      return sender;
    },
    talker(letters, saidBy) {
      const key = `${letters} ${saidBy ?? ''}`;
      const known = byTalker.get(key);
      if (known !== undefined) return known;
      const made = add({ talker: letters, saidBy });
      byTalker.set(key, made);
      return made;
    },
    all: () => all,
  };
};

/** Which unit of the plan a sender is. */
export const unitOf = ({ address, saidBy }: HeardSender, known: KnownUnits): Pick<LiveSender, 'unit' | 'how'> => {
  if (saidBy !== undefined) return { unit: saidBy, how: 'sure' };
  return (address === undefined ? undefined : known.get(address)) ?? {};
};

/** Takes note that a sender spoke, whatever it said. */
export const noteSpoken = (sender: HeardSender, nowMs: number): void => {
  sender.lastMs = nowMs;
  sender.messages += 1;
};

/** More messages than any device sends: damaged data. */
const mostPaces = 256;

/** Takes note of one whole message that comes at a pace of its own. */
export const notePace = ({ paces }: HeardSender, message: number | string, nowMs: number): void => {
  const pace = paces.get(message);
  if (pace !== undefined) pace.add(nowMs);
  else if (paces.size < mostPaces) paces.set(message, startPace(nowMs));
};

/** Whether it should have said something by now, by the quickest of its messages. */
export const isSilent = ({ lastMs, paces }: HeardSender, nowMs: number): boolean => {
  let gapMs = Number.POSITIVE_INFINITY;
  for (const pace of paces.values()) gapMs = Math.min(gapMs, pace.gapMs() ?? gapMs);
  return isOverdue(nowMs - lastMs, gapMs);
};
