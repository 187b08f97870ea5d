import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Plan } from '../../plan-shape.ts';
import type { ProofReport } from '../compare/proof-report.ts';
import { startWatch } from '../compare/watch.ts';
import type { RecordedFrame } from '../readers/recorded-frame.ts';
import type { LinkState } from './link-state.ts';
import { startLiveFindings } from './live-findings.ts';
import { type LiveLine, startLiveLines } from './live-lines.ts';
import type { LiveCurve, LiveNews, LiveSnapshot, LiveUnit } from './live-snapshot.ts';
import { startLiveState } from './live-state.ts';
import { knownUnits, liveUnits, sentenceSayer } from './live-units.ts';
import { type SourceState, startSourceWatch } from './source-watch.ts';
import { sourceWords } from './source-words.ts';

/** A boat that is listened to, held against her plan as she speaks. Pure: bytes and times go in, snapshots come out. */
export interface LiveBoat {
  bytes(bytes: Uint8Array, nowMs: number): void;
  link(link: LinkState, nowMs: number): void;
  /** something that happened beside the bus, such as a frame that was sent */
  note(of: 'source' | 'sent', says: string, nowMs: number): void;
  /** Tells what changed with time alone, a source fallen silent; to be called a few times a second. */
  tick(nowMs: number): void;
  snapshot(nowMs: number): LiveSnapshot;
  curve(reading: number, nowMs: number): LiveCurve | undefined;
  /** all that was heard so far, held against the plan */
  report(): ProofReport;
}

export interface LiveBoatOptions {
  readonly boat: Boat;
  readonly plan: Plan;
  /** what the source is, in words */
  readonly sourceSays: string;
  readonly startMs: number;
  /** id of the bus, or `kit.port` of the talker, that is listened to; absent: the one that fits best */
  readonly on?: string | undefined;
  /** each line as it came, for a recording */
  readonly onLine?: (line: LiveLine, nowMs: number) => void;
  readonly onFrame?: (frame: RecordedFrame, nowMs: number) => void;
  readonly onNews?: (news: LiveNews) => void;
}

/** Holding everything against the plan takes a while: it is done anew after so long (project choice). */
const reportEveryMs = 2000;
const mostNews = 20;
/** What is not as planned is told of once so much was heard: in the first seconds nothing has a pace (project choice). */
const settledMs = 6000;

const wireOf = ({ buses }: Boat, on: string | undefined): { bus?: string; talker?: string } => {
  if (on === undefined) return {};
  return buses.some(({ id }) => id === on) ? { bus: on } : { talker: on };
};

/** What must change before a source is told of again: of speeds that are tried in turn only that they are. */
const keyOf = (state: SourceState): string => {
  if (state.kind === 'gone') return `gone ${state.says}`;
  if (state.kind === 'garbage' && state.searching === true) return 'searching';
  return `${state.kind} ${'baud' in state ? state.baud : ''}`;
};

/** Starts listening for a boat, with nothing heard. */
export const startLiveBoat = (options: LiveBoatOptions): LiveBoat => {
  const { boat, plan, sourceSays, startMs, on, onLine, onFrame, onNews } = options;
  const state = startLiveState(sentenceSayer(indexBoat(boat), plan));
  const source = startSourceWatch(startMs);
  const watch = startWatch({ boat, plan, ...wireOf(boat, on) });
  const news: LiveNews[] = [];
  const findings = startLiveFindings();
  const names = new Map(boat.kit.map(({ id, name }) => [id, name]));
  const spoke = new Map<string, LiveUnit['state']>();
  let nowMs = startMs;
  let whole = 0;
  let told = '';
  let report: ProofReport | undefined;
  let reportedMs = Number.NEGATIVE_INFINITY;
  let firstByteMs: number | undefined;

  const tell = (of: LiveNews['of'], says: string): void => {
    const one: LiveNews = { atMs: nowMs, of, says };
    news.push(one);
    if (news.length > mostNews) news.shift();
    onNews?.(one);
  };

  /** Tells how the source stands when that is not what was told last. */
  const look = (): void => {
    const now = source.state(nowMs);
    const key = keyOf(now);
    if (key === told) return;
    told = key;
    tell('source', sourceWords(now, nowMs));
  };

  const hold = (): ProofReport => {
    report = watch.report();
    reportedMs = nowMs;
    state.know(knownUnits(report));
    const settled = firstByteMs !== undefined && nowMs - firstByteMs >= settledMs;
    for (const { says } of findings.take(settled ? report.findings : [], nowMs)) tell('finding', says);
    return report;
  };

  /** Tells which units began to speak, and which stopped. */
  const lookAtUnits = (): void => {
    if (report === undefined) return;
    for (const { unit, state: now } of liveUnits(report, state.heard(nowMs).senders)) {
      const before = spoke.get(unit);
      if (now === before || now === 'unheard' || now === 'not-due') continue;
      spoke.set(unit, now);
      const name = names.get(unit) ?? unit;
      if (now === 'silent') tell('unit', `${name} has fallen silent.`);
      else tell('unit', before === undefined ? `${name} speaks.` : `${name} speaks again.`);
    }
  };

  const lines = startLiveLines({
    onFrame: (frame) => {
      state.frame(frame, nowMs);
      frame.timeUs ??= nowMs * 1000;
      watch.takeFrame(frame);
      onFrame?.(frame, nowMs);
    },
    onSentence: (sentence) => {
      state.sentence(sentence, nowMs);
      watch.takeSentence(sentence.text, sentence.timeUs ?? nowMs * 1000);
    },
    onLine: (line) => {
      if (line.kind === 'whole' || line.kind === 'comment') whole += line.bytes;
      onLine?.(line, nowMs);
    },
  });

  return {
    bytes(bytes, atMs) {
      nowMs = atMs;
      firstByteMs ??= nowMs;
      whole = 0;
      lines.push(bytes);
      source.heard({ came: bytes.length, whole, nowMs });
      look();
    },
    link(link, atMs) {
      nowMs = atMs;
      if (link.kind === 'ended') lines.end();
      if (link.kind === 'gone') lines.cut();
      source.link(link, nowMs);
      if (link.kind === 'note') tell('source', link.says);
      else look();
    },
    note(of, says, atMs) {
      nowMs = atMs;
      tell(of, says);
    },
    tick(atMs) {
      nowMs = atMs;
      look();
      if (nowMs - reportedMs >= reportEveryMs) hold();
      lookAtUnits();
    },
    snapshot(atMs) {
      nowMs = atMs;
      const heard = state.heard(nowMs);
      const how = source.state(nowMs);
      return {
        atMs: nowMs,
        source: { says: sourceSays, state: how, words: sourceWords(how, nowMs) },
        ...heard,
        units: report === undefined ? [] : liveUnits(report, heard.senders),
        findings: findings.all(),
        news: [...news],
      };
    },
    curve: (reading, atMs) => state.curve(reading, atMs),
    report: () => hold(),
  };
};
