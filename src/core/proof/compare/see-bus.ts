import type { SurveySender } from '../survey/survey-report.ts';
import type { Evidence } from './evidence-book.ts';
import { matchSenders, type SenderMatches, unitsOnBus } from './match-senders.ts';
import type { Planned } from './planned-sends.ts';
import type { ProofWire } from './proof-report.ts';
import type { SeenBus } from './seen.ts';
import { senderKey, type Watched, type WatchedBus } from './watched.ts';

interface Fit {
  readonly id: string;
  readonly known: ProofWire['known'];
}

const foundOn = (planned: Planned, bus: string, senders: readonly SurveySender[]): number => {
  const matches = matchSenders(unitsOnBus(planned, bus), senders).matches;
  return matches.reduce((sum, { how }) => sum + (how === 'doubtful' ? 0.5 : 1), 0);
};

/** Which bus of the boat a recording is of: the one somebody said, the only one, or the one most of whose units are heard. */
const busOf = (planned: Planned, { told, survey }: WatchedBus): Fit => {
  if (told !== undefined) return { id: told, known: 'told' };
  const buses = planned.plan.traffic.buses.map(({ bus }) => bus);
  const [first] = buses;
  if (first === undefined) return { id: '', known: 'unsure' };
  if (buses.length === 1) return { id: first, known: 'only' };
  const fits = buses.map((id) => ({ id, found: foundOn(planned, id, survey.senders) }));
  const most = Math.max(...fits.map(({ found }) => found));
  const best = fits.filter(({ found }) => found === most);
  return { id: best[0]?.id ?? first, known: best.length === 1 && most >= 1 ? 'fits' : 'unsure' };
};

const wireOf = (planned: Planned, { survey }: WatchedBus, { id, known }: Fit): ProofWire => {
  const { broken, cutShort, errorFrames, time, load, fastPackets } = survey;
  const traffic = planned.plan.traffic.buses.find(({ bus }) => bus === id);
  return {
    id,
    kind: 'bus',
    known,
    count: survey.frames + survey.joined,
    broken,
    cutShort,
    errorFrames,
    ...(time === undefined
      ? {}
      : {
          time: {
            durationS: time.durationS,
            longestSilenceS: time.longestSilenceS,
            clockSteps: time.clockSteps.map(({ atFrame, jumpUs }) => ({ atFrame, jumpS: jumpUs / 1_000_000 })),
          },
        }),
    ...(load === undefined
      ? {}
      : {
          load: {
            exactPct: load.exactPct,
            worstPct: load.worstPct,
            plannedAveragePct: traffic?.averagePct ?? 0,
            plannedWorstPct: traffic?.worstPct ?? 0,
            busiest: { second: load.busiest.second, exactPct: load.busiest.exactPct, worstPct: load.busiest.worstPct },
          },
        }),
    fastPackets: {
      complete: fastPackets.complete,
      lost: fastPackets.outOfSequence + fastPackets.overwritten + fastPackets.malformed,
      orphan: fastPackets.orphan,
    },
  };
};

const unitsBySender = (matches: SenderMatches): ReadonlyMap<number, string> =>
  new Map(matches.matches.flatMap(({ unit, senders }) => senders.map((at) => [at, unit] as const)));

/** Finds out what a watched bus is and who on it is who. */
export const seeBus = (planned: Planned, watched: WatchedBus, { values }: Watched): SeenBus => {
  const fit = busOf(planned, watched);
  const { senders } = watched.survey;
  const units = unitsOnBus(planned, fit.id);
  const matches = matchSenders(units, senders);
  const bySender = unitsBySender(matches);
  const evidence = new Map<string, Evidence[]>();
  for (const one of watched.evidence) {
    const key = `${senderKey(one.sender)} ${one.pgn}`;
    evidence.set(key, [...(evidence.get(key) ?? []), one]);
  }
  return {
    kind: 'bus',
    id: fit.id,
    wire: wireOf(planned, watched, fit),
    watched,
    survey: watched.survey,
    senders,
    units,
    sends: units.flatMap(({ sends }) => sends),
    matches,
    values,
    unitOf: (sender) => bySender.get(senders.indexOf(sender)),
    evidenceOf: (sender, pgn) => evidence.get(`${senderKey(sender)} ${pgn}`) ?? [],
  };
};
