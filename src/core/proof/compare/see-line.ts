import { lineLoad } from '../../joins/line-load.ts';
import { type Planned, plannedSends } from './planned-sends.ts';
import type { ProofLine, ProofWire } from './proof-report.ts';
import type { SeenLine } from './seen.ts';
import type { Watched, WatchedLine } from './watched.ts';

interface Fit {
  readonly id: string;
  readonly known: ProofWire['known'];
}

/** How much of what a talker is to say and of what was heard is the same, 0 to 1. */
const share = (planned: Planned, talker: string, heard: ReadonlySet<string>): number => {
  const sends = plannedSends(planned, { kind: 'line', id: talker });
  const due = new Set(sends.flatMap(({ message, everyMs }) => (everyMs === undefined ? [] : [String(message)])));
  const all = new Set([...due, ...heard]);
  return all.size === 0 ? 0 : [...heard].filter((formatter) => due.has(formatter)).length / all.size;
};

/** The talker whose line it is: the one somebody said, the only one, or the one whose sentences are most like these. */
const talkerOf = (planned: Planned, { told, line }: WatchedLine): Fit => {
  if (told !== undefined) return { id: told, known: 'told' };
  const talkers = planned.plan.traffic.lines.map(({ talker }) => talker);
  const [first] = talkers;
  if (first === undefined) return { id: '', known: 'unsure' };
  const heard = new Set(line.records().map(({ formatter }) => formatter));
  const fits = talkers.map((id) => ({ id, share: share(planned, id, heard) }));
  const most = Math.max(...fits.map((fit) => fit.share));
  const best = fits.filter((fit) => fit.share === most);
  if (talkers.length === 1) return { id: first, known: most > 0 ? 'only' : 'unsure' };
  return { id: best[0]?.id ?? first, known: best.length === 1 && most > 0 ? 'fits' : 'unsure' };
};

const lineOf = (planned: Planned, { line }: WatchedLine, id: string): ProofLine => {
  const planned0183 = planned.plan.traffic.lines.find(({ talker }) => talker === id);
  const baud = planned0183?.baud ?? 4800;
  const durationS = (line.time()?.durationUs ?? 0) / 1_000_000;
  const { chars, checksumWrong, checksumAbsent, overLong } = line.counts;
  const load = durationS > 0 ? lineLoad({ charsPerS: chars / durationS, baud }) : undefined;
  return {
    baud,
    ...(load === undefined ? {} : { charsPerS: load.charsPerS, sharePct: load.sharePct }),
    plannedSharePct: planned0183?.sharePct ?? 0,
    checksumWrong,
    checksumAbsent,
    overLong,
  };
};

/** Finds out whose line was watched. */
export const seeLine = (planned: Planned, watched: WatchedLine, { values }: Watched): SeenLine => {
  const { id, known } = talkerOf(planned, watched);
  const time = watched.line.time();
  return {
    kind: 'line',
    id,
    wire: {
      id,
      kind: 'line',
      known,
      count: watched.line.counts.sentences,
      broken: watched.line.counts.broken,
      cutShort: false,
      errorFrames: 0,
      ...(time === undefined
        ? {}
        : {
            time: {
              durationS: time.durationUs / 1_000_000,
              longestSilenceS: time.longestSilenceUs / 1_000_000,
              clockSteps: time.clockSteps.map(({ atFrame, jumpUs }) => ({ atFrame, jumpS: jumpUs / 1_000_000 })),
            },
          }),
      line: lineOf(planned, watched, id),
    },
    watched,
    sends: plannedSends(planned, { kind: 'line', id }),
    values,
  };
};
