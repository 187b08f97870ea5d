import { type LaidBoat, tableLine } from '../blackouts/blackout-table.ts';
import { type Effect, effectOf, type Hit } from '../blackouts/effect.ts';
import { everyFailure } from '../blackouts/every-failure.ts';
import { needLosses } from '../blackouts/need-losses.ts';
import { type TableLine, vitalOf } from '../blackouts/vitals.ts';
import type { BlackoutEntry, Failure, Loss, VitalEntry } from '../blackouts-shape.ts';
import type { Boat, Need } from '../boat/boat-schema.ts';
import { remember } from '../boat/remember.ts';
import { rememberFor } from '../boat/remember-for.ts';
import { withoutNeeds } from '../joins/standing-boat.ts';
import type { Reaches } from '../readings/reaches.ts';
import { refitOf } from '../readings/refit.ts';
import { askedBy } from '../readings/ways-in.ts';
import type { Candidate } from './candidate.ts';
import { type CureContext, cureContext } from './cure-context.ts';
import { graft } from './graft.ts';
import { reserveCandidates } from './reserve-candidates.ts';
import { edited } from './try-cure.ts';

/** A failure as one word. */
export const failureKey = ({ fails, how }: Failure): string => `${how} ${fails}`;

/** A line of the table with all that do the same. */
export const failuresOf = (entry: BlackoutEntry): readonly Failure[] => [entry, ...(entry.also ?? [])];

/** A vital reading, and the failures that take it. */
interface Asked {
  readonly vital: VitalEntry;
  readonly entries: readonly BlackoutEntry[];
}

/** What the failures do to the boat with a cure in her that no longer take the vital reading. */
export interface AfterCure {
  /** what of the needs is met, and what each of these failures takes then, by `failureKey` */
  readonly with: (needs: readonly Need[]) => {
    readonly met: readonly Need[];
    readonly loses: ReadonlyMap<string, readonly Loss[]>;
  };
}

/** Some failures of a boat, each with what it does. */
interface Failed {
  readonly hits: readonly Hit[];
  readonly effects: readonly Effect[];
}

const linesWith = ({ hits, effects }: Failed, losses: readonly Loss[][]): TableLine[] =>
  hits.flatMap(({ failures }, at) => {
    const effect = effects[at];
    return effect === undefined
      ? []
      : tableLine({ failures, effect, dark: [...effect.dark], still: [] }, losses[at] ?? []);
  });

const keyOfHit = ({ failures: [own] }: Hit): string => (own === undefined ? '' : failureKey(own));

const only = ({ hits, effects }: Failed, keys: ReadonlySet<string>): Failed => {
  const kept = hits.map((hit) => keys.has(keyOfHit(hit)));
  return { hits: hits.filter((_, at) => kept[at]), effects: effects.filter((_, at) => kept[at]) };
};

/** Makes a candidate on the boat and lets fail what takes the vital reading; nothing where all of it still does. */
const tryOn = (
  { context: { router, index, phase }, laid }: { readonly context: CureContext; readonly laid: LaidBoat },
  { candidate, vital, entries, needs }: Asked & { readonly candidate: Candidate; readonly needs: readonly Need[] },
): AfterCure | undefined => {
  const boat = edited(index.boat, candidate);
  if (boat === undefined) return undefined;
  const model = graft(laid, boat, { router, phase });
  const { wired } = model;
  const reaches = refitOf(wired.index, () => wired.joins).reachesIn(phase);
  const taking = new Set(entries.flatMap(failuresOf).map(failureKey));
  const hits = everyFailure(model).filter((hit) => taking.has(keyOfHit(hit)));
  const all: Failed = { hits, effects: hits.map((hit) => effectOf(model, hit)) };
  const { ways, lossesOf } = needLosses(wired, all.effects, reaches);
  const own = lossesOf(needs);
  const lines = linesWith(all, own.losses);
  const still = new Set(vitalOf(vital.of, { wired, ways, held: own.held, lines })?.points.map(failureKey));
  const spared = new Set(lines.map(({ entry }) => failureKey(entry)).filter((key) => !still.has(key)));
  const left = entries.map(failuresOf).filter((failures) => failures.every((one) => spared.has(failureKey(one))));
  if (left.length === 0) return undefined;
  const asked = only(all, new Set(left.flat().map(failureKey)));
  const then = needLosses(wired, asked.effects, reaches);
  return {
    with: (asNeeded) => {
      const { held, losses } = then.lossesOf(asNeeded);
      const loses = linesWith(asked, losses).map(({ entry }) => [failureKey(entry), entry.loses] as const);
      return { met: held.map(({ need }) => need), loses: new Map(loses) };
    },
  };
};

/** What is looked for and tried on one boat as she is laid, in one phase. */
export interface ReserveTrials {
  readonly candidatesFor: (asked: Asked) => readonly Candidate[];
  readonly tried: (asked: Asked & { readonly candidate: Candidate; readonly boat: Boat }) => AfterCure | undefined;
}

/** Candidates and tries kept of one boat: more than are made for all her vital readings. */
const most = { candidates: 8, tries: 32 } as const;

const trialsOn = ({ laid: whole, reaches, phase }: TrialsInput): ReserveTrials => {
  // what is needed where, and all else that she is not laid by, is not shown to what is kept meanwhile
  const index = { ...whole.index, boat: withoutNeeds(whole.index.boat) };
  const laid = { ...whole, index };
  const bare = { ...reaches, network: { ...reaches.network, index } };
  const context = cureContext({ index, reachesIn: () => bare }, phase, laid.joinsAt(phase));
  const askText = ({ vital: { of, at }, entries }: Asked): string =>
    [of, ...at, '', ...entries.map(failureKey)].join(' ');
  const trial = remember({
    most: most.tries,
    keyOf: ({ candidate, needs, ...asked }: Asked & { candidate: Candidate; needs: readonly Need[] }) =>
      [askText(asked), ...needs.map(askedBy), JSON.stringify(candidate.edits)].join('\n'),
    find: (asked) => tryOn({ context, laid }, asked),
  });
  return {
    candidatesFor: remember({
      most: most.candidates,
      keyOf: askText,
      find: (asked) => reserveCandidates({ context, ...asked }),
    }),
    // first by what is needed of the vital reading alone: most candidates spare it nothing, and nothing else is to be asked then
    tried: ({ boat, ...asked }) =>
      trial({ ...asked, needs: boat.needs.filter(({ reading }) => reading === asked.vital.of) }),
  };
};

interface TrialsInput {
  readonly laid: LaidBoat;
  readonly reaches: Reaches;
  readonly phase: number;
}

/** For as long as a boat lies as she does: an edit of a need asks again only what it changed. */
export const reserveTrials = rememberFor({
  most: 2,
  keyOf: ({ phase }: TrialsInput) => String(phase),
  find: (_lines: LaidBoat['lines'], input) => trialsOn(input),
});
