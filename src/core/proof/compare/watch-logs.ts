import type { Boat } from '../../boat/boat-schema.ts';
import type { Plan } from '../../plan-shape.ts';
import type { ReaderCounts } from '../readers/recording-reader-shape.ts';
import type { RecordingSink } from '../readers/recording-sink.ts';
import { proofOf } from './proof-of.ts';
import type { ProofReport, ProofWire } from './proof-report.ts';
import { startWatch, type Watch } from './watch.ts';
import type { Watched } from './watched.ts';

/** One recording: how it is read, and the wire it is of where somebody said so. */
export interface WatchedLog {
  readonly read: (sink: RecordingSink) => Promise<ReaderCounts>;
  /** a bus, or `kit.port` of a talker */
  readonly wire?: string;
  /** it comes by once only, and cannot be looked at beforehand */
  readonly isOnce?: boolean;
}

interface Planned {
  readonly boat: Boat;
  readonly plan: Plan;
}

const startFor = ({ boat, plan }: Planned, wire: string | undefined): Watch =>
  startWatch({ boat, plan, ...(wire === undefined ? {} : wire.includes('.') ? { talker: wire } : { bus: wire }) });

/** Recordings of one wire are read one after the other into one watch. */
const watchedOf = async (planned: Planned, wire: string | undefined, logs: readonly WatchedLog[]): Promise<Watched> => {
  const watch = startFor(planned, wire);
  const read: ReaderCounts[] = [];
  for (const log of logs) {
    const counts = await log.read({
      onFrame: watch.takeFrame,
      onMessage: watch.takeMessage,
      onSentence: ({ text, timeUs }) => watch.takeSentence(text, timeUs),
    });
    read.push(counts);
  }
  return watch.watched(read);
};

/** Which wire each recording that nobody placed fits best: each is read once for that, where there are several. */
const placed = async (planned: Planned, logs: readonly WatchedLog[]): Promise<readonly WatchedLog[]> => {
  if (logs.length < 2 || logs.some(({ isOnce }) => isOnce === true)) return logs;
  const found: WatchedLog[] = [];
  for (const log of logs) {
    const alone =
      log.wire === undefined ? proofOf(planned, [await watchedOf(planned, undefined, [log])]).wires[0] : undefined;
    found.push(alone === undefined || alone.known === 'unsure' ? log : { ...log, wire: alone.id });
  }
  return found;
};

const grouped = (logs: readonly WatchedLog[]): (readonly WatchedLog[])[] => {
  const groups = new Map<string | WatchedLog, WatchedLog[]>();
  for (const log of logs) groups.set(log.wire ?? log, [...(groups.get(log.wire ?? log) ?? []), log]);
  return [...groups.values()];
};

/**
 * Holds recordings against a plan: each is given to the wire somebody said, else to the one it fits best; several of one
 * wire count as one. What was watched comes with the report, for what is taken over from it.
 */
export const watchLogs = async (
  planned: Planned,
  logs: readonly WatchedLog[],
): Promise<{ readonly report: ProofReport; readonly watched: readonly Watched[] }> => {
  const watched: Watched[] = [];
  for (const group of grouped(await placed(planned, logs)))
    watched.push(await watchedOf(planned, group[0]?.wire, group));
  const report = proofOf(planned, watched);
  const told = new Set(logs.map(({ wire }) => wire));
  // What was placed here by its fit was told by nobody.
  const wires = report.wires.map(
    (wire): ProofWire => (wire.known !== 'told' || told.has(wire.id) ? wire : { ...wire, known: 'fits' }),
  );
  return { report: { ...report, wires }, watched };
};
