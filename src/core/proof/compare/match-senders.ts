import { byCodeUnit } from '../../boat/ids.ts';
import { isMakersOwn } from '../../facts/pgns.ts';
import { instanceOf, isAlwaysEmpty, isProtocol } from '../survey/draft-sends.ts';
import { senderKind } from '../survey/sender-words.ts';
import type { SurveySender } from '../survey/survey-report.ts';
import { kindFit } from './alike-kinds.ts';
import { type Planned, type PlannedSend, plannedSends, portsOnBus, unitOfPort } from './planned-sends.ts';

/** A unit the plan has on a bus. */
export interface PlannedUnit {
  readonly unit: string;
  /** kind of its sheet */
  readonly kind: string;
  readonly identity?: string;
  readonly sends: readonly PlannedSend[];
}

/** Which heard senders are one planned unit. */
export interface SenderMatch {
  readonly unit: string;
  /** places in the list of senders: the unit’s own first, then what else speaks from the same box */
  readonly senders: readonly number[];
  /** `identity`: its NAME stands in the boat file; `sure`, `alike`, `doubtful` as in the report */
  readonly how: 'identity' | 'sure' | 'alike' | 'doubtful';
  /** of `alike` and `doubtful`: other units it could be */
  readonly orElse: readonly string[];
}

/** Every heard sender given to a planned unit, or to none. */
export interface SenderMatches {
  readonly matches: readonly SenderMatch[];
  /** planned units nobody was found for */
  readonly silent: readonly string[];
  /** senders no planned unit stands for, with the units each could be */
  readonly strangers: readonly { readonly sender: number; readonly couldBe: readonly string[] }[];
}

// Worth of what speaks for a match; project choices.
const worthOfKind = 3;
const worthOfMessages = 4;
const worthOfInstances = 2;
/** less than this is no match */
const leastScore = 2.5;
/** a match this much better than the next is sure */
const clearLead = 0.75;

const isTelling = (pgn: number): boolean => !isProtocol(pgn) && !isMakersOwn(pgn);

/** The units of the plan on one bus, by id. */
export const unitsOnBus = (planned: Planned, bus: string): PlannedUnit[] => {
  const sends = plannedSends(planned, { kind: 'bus', id: bus });
  const units = [...new Set(portsOnBus(planned, bus).map(unitOfPort))].sort(byCodeUnit);
  return units.map((unit) => {
    const identity = planned.index.kit.get(unit)?.identity;
    return {
      unit,
      kind: planned.index.sheetOf.get(unit)?.kind ?? 'unknown',
      ...(identity === undefined ? {} : { identity }),
      sends: sends.filter((sent) => sent.unit === unit),
    };
  });
};

const heardNumbers = (sender: SurveySender): Set<number> =>
  new Set(sender.sends.filter((sent) => isTelling(sent.pgn) && !isAlwaysEmpty(sent)).map(({ pgn }) => pgn));

/** How much of what a unit is to send and of what a sender sends is the same, 0 to 1; nothing either way tells nothing. */
const messagesFit = (unit: PlannedUnit, sender: SurveySender): number => {
  const due = new Set(unit.sends.flatMap(({ message, everyMs }) => (everyMs === undefined ? [] : [message])));
  const may = new Set(unit.sends.map(({ message }) => message));
  const heard = heardNumbers(sender);
  const both = [...heard].filter((pgn) => may.has(pgn)).length;
  const all = new Set([...due, ...heard]).size;
  return all === 0 ? 0 : both / all;
};

/** 1 where the numbers of tanks, engines or batteries are the planned ones, -1 where they are others, 0 where none are told. */
const instancesFit = (unit: PlannedUnit, sender: SurveySender): number => {
  let right = 0;
  let wrong = 0;
  for (const { message, instances } of unit.sends) {
    const parts = sender.sends.find(({ pgn }) => pgn === message)?.parts ?? [];
    const heard = new Set(parts.flatMap((part) => instanceOf(Number(message), part) ?? []));
    if (instances.length === 0 || heard.size === 0) continue;
    if (instances.some((instance) => heard.has(instance))) right += 1;
    else wrong += 1;
  }
  return right + wrong === 0 ? 0 : (right - wrong) / (right + wrong);
};

const scoreOf = (unit: PlannedUnit, sender: SurveySender): number =>
  (worthOfKind / 2) * kindFit(senderKind(sender).kind, unit.kind) +
  worthOfMessages * messagesFit(unit, sender) +
  worthOfInstances * instancesFit(unit, sender);

interface Pair {
  readonly at: number;
  readonly sender: number;
  readonly score: number;
}

/** Pairs that may be, best first, then in the order of units and senders. */
const pairsOf = (units: readonly PlannedUnit[], senders: readonly SurveySender[], free: ReadonlySet<number>): Pair[] =>
  units
    .flatMap((unit, at) =>
      unit.identity !== undefined && senders.some(({ name }) => name?.hex === unit.identity)
        ? []
        : [...free].map((sender) => {
            const heard = senders[sender];
            return { at, sender, score: heard === undefined ? 0 : scoreOf(unit, heard) };
          }),
    )
    .filter(({ score }) => score >= leastScore)
    .sort((a, b) => b.score - a.score || a.at - b.at || a.sender - b.sender);

/** Senders that claim one maker and one number with another function speak from one box (from memory). */
const isSameBox = (a: SurveySender, b: SurveySender): boolean =>
  a.name !== undefined &&
  b.name !== undefined &&
  a.name.hex !== b.name.hex &&
  a.name.makerCode === b.name.makerCode &&
  a.name.unique === b.name.unique;

const shareBox = (senders: readonly SurveySender[], own: number, free: ReadonlySet<number>): number[] => {
  const first = senders[own];
  return [...free].filter((other) => {
    const second = senders[other];
    return first !== undefined && second !== undefined && isSameBox(first, second);
  });
};

const isEqualPlan = (a: PlannedUnit, b: PlannedUnit): boolean =>
  a.kind === b.kind &&
  JSON.stringify(a.sends.map(({ message, instances }) => [message, instances])) ===
    JSON.stringify(b.sends.map(({ message, instances }) => [message, instances]));

type Given = ReadonlyMap<number, number>;

/** Best first: each unit and each sender once. */
const giveOut = (pairs: readonly Pair[]): Given => {
  const given = new Map<number, number>();
  const taken = new Set<number>();
  for (const { at, sender } of pairs) {
    if (given.has(at) || taken.has(sender)) continue;
    given.set(at, sender);
    taken.add(sender);
  }
  return given;
};

/**
 * How sure a pair is. Another unit that would fit the sender as well makes it doubtful where that one is still without a
 * sender or fits this one’s better; where both are planned alike, either may be meant and nothing is wrong.
 */
const howSure = (
  units: readonly PlannedUnit[],
  pairs: readonly Pair[],
  given: Given,
  { at, sender }: { at: number; sender: number },
): Pick<SenderMatch, 'how' | 'orElse'> => {
  const scoreOfPair = (unit: number, heard: number | undefined): number =>
    pairs.find((pair) => pair.at === unit && pair.sender === heard)?.score ?? 0;
  const own = scoreOfPair(at, sender);
  // Whoever has a clearly better sender of its own is no rival.
  const rivals = pairs.filter(
    (pair) =>
      pair.sender === sender &&
      pair.at !== at &&
      pair.score > own - clearLead &&
      scoreOfPair(pair.at, given.get(pair.at)) - pair.score < clearLead,
  );
  const others = pairs.filter((pair) => pair.at === at && pair.sender !== sender && pair.score > own - clearLead);
  const stillFree = others.filter((pair) => ![...given.values()].includes(pair.sender));
  const names = rivals.flatMap((rival) => units[rival.at]?.unit ?? []).sort(byCodeUnit);
  if (rivals.length === 0 && stillFree.length === 0) return { how: 'sure', orElse: [] };
  const mine = units[at];
  const allAlike = rivals.every(({ at: other }) => {
    const theirs = units[other];
    return mine !== undefined && theirs !== undefined && isEqualPlan(mine, theirs);
  });
  return { how: allAlike && stillFree.length === 0 ? 'alike' : 'doubtful', orElse: names };
};

const nobody: SurveySender = { addresses: [], claims: 0, frames: 0, sends: [] };

/** Whoever only asks others who they are, and shows no NAME, is the recorder or a tool beside it: nobody’s unit. */
const isAsker = ({ name, sends }: SurveySender): boolean =>
  name === undefined && sends.every(({ pgn }) => isProtocol(pgn));

const byIdentity = (units: readonly PlannedUnit[], senders: readonly SurveySender[]): Map<number, number> => {
  const found = new Map<number, number>();
  for (const [at, { identity }] of units.entries()) {
    const sender = identity === undefined ? -1 : senders.findIndex(({ name }) => name?.hex === identity);
    if (sender >= 0) found.set(at, sender);
  }
  return found;
};

/**
 * Which heard sender of one bus is which planned unit: by its NAME where the boat file has it, else by what it says it is,
 * what it sends and under which numbers. Pure; a doubt is told, never settled by chance.
 *
 * @example matchSenders(unitsOnBus(planned, 'nav'), survey.report().senders)
 */
export const matchSenders = (units: readonly PlannedUnit[], senders: readonly SurveySender[]): SenderMatches => {
  const named = byIdentity(units, senders);
  const heard = [...senders.keys()].filter((at) => !isAsker(senders[at] ?? nobody));
  const free = new Set(heard.filter((at) => ![...named.values()].includes(at)));
  for (const own of named.values()) for (const box of shareBox(senders, own, free)) free.delete(box);
  const pairs = pairsOf(units, senders, free);
  const given = giveOut(pairs);
  const taken = new Set([...named.values(), ...given.values()]);
  const left = new Set(heard.filter((sender) => !taken.has(sender)));
  const matches = units.flatMap(({ unit }, at): SenderMatch[] => {
    const sender = named.get(at) ?? given.get(at);
    if (sender === undefined) return [];
    const boxes = shareBox(senders, sender, left);
    for (const box of boxes) left.delete(box);
    const how = named.has(at)
      ? ({ how: 'identity', orElse: [] } as const)
      : howSure(units, pairs, given, { at, sender });
    return [{ unit, senders: [sender, ...boxes], ...how }];
  });
  const found = new Set(matches.map(({ unit }) => unit));
  return {
    matches,
    silent: units.map(({ unit }) => unit).filter((unit) => !found.has(unit)),
    strangers: [...left].map((sender) => ({
      sender,
      couldBe: pairs.filter((pair) => pair.sender === sender).flatMap(({ at }) => units[at]?.unit ?? []),
    })),
  };
};
