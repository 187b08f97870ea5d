import { byCodeUnit } from '../../boat/ids.ts';
import type { FastPacketCounts } from '../decode/fast-packet.ts';
import { partOf } from '../decode/message-part.ts';
import type { ReaderCounts } from '../readers/recording-reader-shape.ts';
import type { BusiestSecond } from '../timing/busiest-second.ts';
import type { TimeSummary } from '../timing/time-axis.ts';
import type { Sender } from './sender-book.ts';
import type { SentenceReport } from './sentence-survey-report.ts';
import type { SharedInstance, SurveyLoad, SurveyReport, SurveySender } from './survey-report.ts';

/** What a survey counts of the frames themselves. */
export interface SurveyTallies {
  frames: number;
  /** messages the recorder had joined, whose frames are not known */
  joined: number;
  shortFrames: number;
  errorFrames: number;
  remoteFrames: number;
  exactBits: number;
  unstuffedBits: number;
  worstBits: number;
  leftOut: number;
  claims: number;
  readonly framesByAddress: number[];
  readonly requests: Map<number, number>;
}

interface Surveyed {
  readonly tallies: SurveyTallies;
  readonly senders: readonly Sender[];
  readonly time: TimeSummary | undefined;
  readonly busiest: BusiestSecond | undefined;
  readonly fastPackets: FastPacketCounts;
  readonly read: readonly ReaderCounts[];
  readonly sentences: SentenceReport | undefined;
}

/** Places that could not be read, told of all recordings together. */
const mostPlaces = 20;

const bitRateBps = 250_000;
const pct = ({ bits, seconds }: { bits: number; seconds: number }): number => (100 * bits) / seconds / bitRateBps;

const loadOf = ({ tallies, time, busiest }: Surveyed): SurveyLoad | undefined => {
  if (time === undefined || busiest === undefined || time.durationUs === 0 || tallies.joined > 0) return undefined;
  const seconds = time.durationUs / 1_000_000;
  return {
    exactPct: pct({ bits: tallies.exactBits, seconds }),
    worstPct: pct({ bits: tallies.worstBits, seconds }),
    busiest: {
      second: busiest.second,
      frames: busiest.frames,
      exactPct: pct({ bits: busiest.exactBits, seconds: 1 }),
      worstPct: pct({ bits: busiest.worstBits, seconds: 1 }),
    },
  };
};

const senderSummary = ({ address, addresses, name, claims, frames, product, sent }: Sender): SurveySender => ({
  ...(address === undefined ? {} : { address }),
  addresses: [...addresses],
  ...(name === undefined ? {} : { name }),
  claims,
  frames,
  ...(product === undefined ? {} : { product }),
  sends: sent.summary(),
});

const placeOf = (sender: SurveySender): number => sender.address ?? 256 + (sender.addresses.at(-1) ?? 256);
const byPlaceAndName = (a: SurveySender, b: SurveySender): number =>
  placeOf(a) - placeOf(b) || byCodeUnit(a.name?.hex ?? '', b.name?.hex ?? '');

const byPgn = (senders: readonly Sender[]): SurveyReport['byPgn'] => {
  const counts = new Map<number, { pgn: number; frames: number; messages: number }>();
  for (const { pgn, frames, messages } of senders.flatMap(({ sent }) => [...sent.all()])) {
    const before = counts.get(pgn);
    counts.set(pgn, {
      pgn,
      frames: frames + (before?.frames ?? 0),
      messages: messages + (before?.messages ?? 0),
    });
  }
  return [...counts.values()].sort((a, b) => a.pgn - b.pgn);
};

/** One instance under several senders. Empty messages count too: what a device sends nothing under is taken all the same. */
const sharedInstances = (senders: readonly Sender[]): SharedInstance[] => {
  const users = new Map<string, { shared: Omit<SharedInstance, 'addresses'>; addresses: Set<number> }>();
  for (const sender of senders) {
    const address = sender.address ?? sender.addresses.at(-1);
    for (const { pgn, parts } of address === undefined ? [] : sender.sent.all()) {
      for (const part of parts.keys()) {
        const { instance, kind } = partOf(part);
        if (instance === undefined || address === undefined) continue;
        const key = `${pgn} ${part}`;
        const found = users.get(key);
        if (found !== undefined) found.addresses.add(address);
        else {
          const shared = { pgn, instance, ...(kind === undefined ? {} : { kind }) };
          users.set(key, { shared, addresses: new Set([address]) });
        }
      }
    }
  }
  return [...users.values()]
    .filter(({ addresses }) => addresses.size > 1)
    .map(({ shared, addresses }) => ({ ...shared, addresses: [...addresses].sort((a, b) => a - b) }))
    .sort((a, b) => a.pgn - b.pgn || a.instance - b.instance || (a.kind ?? 0) - (b.kind ?? 0));
};

const timeOf = ({ durationUs, longestSilenceUs, clockSteps }: TimeSummary): NonNullable<SurveyReport['time']> => ({
  durationS: durationUs / 1_000_000,
  longestSilenceS: longestSilenceUs / 1_000_000,
  clockSteps,
});

/** Turns what a survey counted into its report. */
export const surveySummary = (surveyed: Surveyed): SurveyReport => {
  const { tallies, senders, time, fastPackets, read, sentences } = surveyed;
  const load = loadOf(surveyed);
  const numbers = byPgn(senders);
  const active = senders
    .filter(({ frames, sent }) => frames > 0 || [...sent.all()].length > 0)
    .map(senderSummary)
    .sort(byPlaceAndName);
  return {
    frames: tallies.frames,
    joined: tallies.joined,
    shortFrames: tallies.shortFrames,
    errorFrames: tallies.errorFrames,
    remoteFrames: tallies.remoteFrames,
    broken: read.reduce((sum, { broken }) => sum + broken, 0),
    brokenAt: read.flatMap(({ brokenAt }) => brokenAt).slice(0, mostPlaces),
    cutShort: read.some(({ cutShort }) => cutShort),
    bits: { exact: tallies.exactBits, unstuffed: tallies.unstuffedBits, worst: tallies.worstBits },
    ...(time === undefined ? {} : { time: timeOf(time) }),
    ...(load === undefined ? {} : { load }),
    messages: numbers.reduce((sum, { messages }) => sum + messages, 0),
    byPgn: numbers,
    byAddress: tallies.framesByAddress
      .map((frames, address) => ({ address, frames }))
      .filter(({ frames }) => frames > 0),
    fastPackets,
    claims: tallies.claims,
    requests: [...tallies.requests].map(([pgn, count]) => ({ pgn, count })).sort((a, b) => a.pgn - b.pgn),
    senders: active,
    sharedInstances: sharedInstances(senders),
    withoutClaim: active.filter(({ name }) => name === undefined).flatMap(({ addresses }) => addresses),
    lenSum: active.reduce((sum, { product }) => sum + (product?.len ?? 0), 0),
    leftOut: tallies.leftOut,
    ...(sentences === undefined ? {} : { sentences }),
  };
};
