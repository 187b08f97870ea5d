import type { BoatIndex } from '../boat/boat-index.ts';
import { awgConductors } from '../facts/conductors.ts';
import { feedInsulation } from '../facts/power-limits.ts';
import type { LineEntry } from '../plan-shape.ts';
import type { DriveLeadEntry, FeedEntry } from '../power-shape.ts';
import { ohmPerKmAt, workingC } from './conductor-ohm.ts';
import { type Conductor, conductorsOf } from './conductors-of.ts';
import type { DriveLead } from './drive-leads.ts';
import { dropByOhmV } from './drop-by-ohm.ts';
import type { FeedLaying } from './feed-laying.ts';
import { pickConductor } from './pick-conductor.ts';
import { type GivenWire, givenWire } from './wire-aboard.ts';

/** A lead with the wire that stands there; `unknown` where nobody has said how thick, absent where the plan picks it. */
interface LeadWire {
  readonly lead: DriveLead;
  readonly given: GivenWire | 'unknown' | undefined;
  readonly laying: FeedLaying;
}

/** The copper of a lead. */
interface Copper {
  readonly wire: NonNullable<DriveLeadEntry['wire']>;
  readonly areaMm2: number;
  readonly ohmPerKm20: number;
}

/** What leads ask of the feed before them: length on the same wire, and volts of the share that are spent in wires that stand. */
export interface LeadShare {
  readonly wires: readonly LeadWire[];
  readonly moreLoopM: number;
  readonly spentV: number;
  readonly spentPeakV: number;
}

const loopM = ({ line }: DriveLead): number => 2 * line.longestM;

const lostV = ({ lead, laying }: LeadWire, ohmPerKm20: number, currentA: number): number =>
  dropByOhmV({
    currentA,
    loopM: loopM(lead),
    ohmPerKm: ohmPerKmAt({ ohmPerKm20, tempC: workingC(laying.engineSpace) }),
  });

const isGiven = (given: LeadWire['given']): given is GivenWire => given !== undefined && given !== 'unknown';

/**
 * Power cable and drive cable of a pilot are added: one share of the volts, one size (docs/methods/drive-leads.md). Leads
 * that the plan picks lengthen the feed; those that stand take their volts from it.
 */
export const leadShare = (
  index: BoatIndex,
  leads: readonly DriveLead[],
  layingOf: (line: LineEntry) => FeedLaying,
): LeadShare => {
  const wires = leads.map((lead) => ({
    lead,
    given: givenWire(index, lead.line, false),
    laying: layingOf(lead.line),
  }));
  const open = wires.flatMap(({ lead, given }) => (given === undefined ? loopM(lead) : []));
  const spent = (amps: (lead: DriveLead) => number): number[] =>
    wires.flatMap((wire) => (isGiven(wire.given) ? lostV(wire, wire.given.ohmPerKm20, amps(wire.lead)) : []));
  return {
    wires,
    moreLoopM: Math.max(0, ...open),
    spentV: Math.max(0, ...spent(({ runA }) => runA)),
    spentPeakV: Math.max(0, ...spent(({ peakA }) => peakA)),
  };
};

/**
 * The current that a wire is picked with so that it keeps both shares: `dropV` as the drive runs, `peakV` at its peak.
 * R I_peak <= E_peak is R (I_peak E / E_peak) <= E, so I = max(I_run, I_peak E / E_peak).
 *
 * @example currentForBoth({ runA: 3, peakA: 34, dropV: 0.36, peakV: 1.2 }) // 10.2
 */
export const currentForBoth = ({
  runA,
  peakA,
  dropV,
  peakV,
}: {
  readonly runA: number;
  readonly peakA: number;
  readonly dropV: number;
  readonly peakV: number;
}): number => (peakV > 0 ? Math.max(runA, (peakA * dropV) / peakV) : runA);

interface LeadAsk {
  readonly feed: Pick<FeedEntry, 'allowedV' | 'wire' | 'areaMm2' | 'realDropV' | 'fuseA' | 'lengthM' | 'loadA'>;
  readonly nominalV: number;
  /** that feed and lead may lose together at the peak of the drive */
  readonly peakV: number;
}

const feedOhmOf = ({ realDropV = 0, loadA }: LeadAsk['feed']): number => (loadA > 0 ? realDropV / loadA : 0);

/** Volts a lead may lose where the feed before it stands: what that leaves, or its share by length where nobody knows the feed. */
const leftV = ({ feed }: LeadAsk, { lead }: LeadWire): number => {
  if (feed.realDropV !== undefined) return feed.allowedV - feed.realDropV;
  const wholeM = feed.lengthM + lead.line.longestM;
  return wholeM > 0 ? (feed.allowedV * lead.line.longestM) / wholeM : feed.allowedV;
};

/** The size of the feed where the plan picks both; else the thinnest that keeps what is left and bears the fuse. */
const pickedCopper = (ask: LeadAsk, wire: LeadWire): Conductor | undefined => {
  const { feed } = ask;
  if (feed.wire === 'picked') return conductorsOf('metric').find(({ areaMm2 }) => areaMm2 === feed.areaMm2);
  const { runA, peakA } = wire.lead;
  const dropV = leftV(ask, wire);
  const peakV = ask.peakV - feedOhmOf(feed) * (feed.loadA - runA + peakA);
  const pick = pickConductor({
    system: 'metric',
    currentA: currentForBoth({ runA, peakA, dropV, peakV }),
    loopM: loopM(wire.lead),
    dropV,
    ...(feed.fuseA === undefined ? {} : { fuseA: feed.fuseA }),
    insulationC: feedInsulation.metric.value,
    sheathed: true,
    ...wire.laying,
  });
  return pick.fits ? pick.conductor : undefined;
};

const copperOf = (ask: LeadAsk, wire: LeadWire): Copper | undefined => {
  if (wire.given === 'unknown') return undefined;
  if (wire.given !== undefined) {
    return { ...wire.given, wire: wire.given.wire === 'settled' ? 'settled' : 'aboard' };
  }
  const picked = pickedCopper(ask, wire);
  return picked === undefined ? undefined : { ...picked, wire: 'picked' };
};

/** What feed and lead lose one after the other, as the drive runs and at its peak. */
const togetherOf = (
  { feed, nominalV }: LeadAsk,
  wire: LeadWire,
  ohmPerKm20: number,
): Pick<DriveLeadEntry, 'realDropV' | 'togetherV' | 'togetherPct' | 'peakPct'> => {
  const { runA, peakA } = wire.lead;
  const realDropV = lostV(wire, ohmPerKm20, runA);
  if (feed.realDropV === undefined) return { realDropV };
  const peakV = feed.realDropV + feedOhmOf(feed) * (peakA - runA) + lostV(wire, ohmPerKm20, peakA);
  const togetherV = feed.realDropV + realDropV;
  return { realDropV, togetherV, togetherPct: (100 * togetherV) / nominalV, peakPct: (100 * peakV) / nominalV };
};

const leadEntry = (ask: LeadAsk, wire: LeadWire): DriveLeadEntry => {
  const { line, to, runA, peakA } = wire.lead;
  const copper = copperOf(ask, wire);
  const awg = awgConductors.find((entry) => entry.areaMm2 >= (copper?.areaMm2 ?? 0) * (1 - 1e-9))?.size;
  return {
    line: line.id,
    to,
    runA,
    peakA,
    lengthM: line.longestM,
    ...(wire.given === 'unknown' ? { wire: 'aboard' } : {}),
    ...(copper === undefined ? {} : { wire: copper.wire, areaMm2: copper.areaMm2 }),
    ...(copper === undefined || awg === undefined ? {} : { awg }),
    ...(copper === undefined ? {} : togetherOf(ask, wire, copper.ohmPerKm20)),
  };
};

/** The leads behind a feed with their wire and what feed and lead lose together; none where it feeds no drive. */
export const sizeLeads = (ask: LeadAsk, { wires }: LeadShare): DriveLeadEntry[] =>
  wires.map((wire) => leadEntry(ask, wire));
