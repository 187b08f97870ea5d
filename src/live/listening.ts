import type { Boat } from '../core/boat/boat-schema.ts';
import type { Plan } from '../core/plan-shape.ts';
import { frameText } from '../core/proof/asking/sent-frame.ts';
import type { ProofReport } from '../core/proof/compare/proof-report.ts';
import { startLiveBoat } from '../core/proof/live/live-boat.ts';
import type { LiveCurve, LiveNews, LiveNow } from '../core/proof/live/live-snapshot.ts';
import { askBus, type BusAsking } from './ask-bus.ts';
import type { LiveSource } from './live-source.ts';
import { startRecorder } from './recorder.ts';

/** What is asked of the units of a bus, after a person said yes to that. */
export interface AskOptions {
  readonly line: string;
  readonly isThorough: boolean;
}

/** A boat that is being listened to. */
export interface Listening {
  snapshot(): LiveNow;
  curve(reading: number): LiveCurve | undefined;
  report(): ProofReport;
  /** Asks the units who they are. Only to be called after a person said yes, and each time anew. */
  ask(options: AskOptions): void;
  /** comes back when the source has ended by itself */
  readonly ended: Promise<void>;
  stop(): Promise<void>;
}

const tickMs = 500;

/** Time that never goes back, whatever is done to the clock of the machine. */
const steadyClock = (): (() => number) => {
  const startMs = Date.now() - performance.now();
  return () => startMs + performance.now();
};

/**
 * Starts listening to a source; `recordTo` is the file that what comes in is written on the end of.
 *
 * @throws UserError where that file cannot be opened, before anything is listened to
 */
export const startListening = ({
  source,
  boat,
  plan,
  on,
  recordTo,
  onNews,
  askCommand,
}: {
  source: LiveSource;
  boat: Boat;
  plan: Plan;
  /** id of the bus, or `kit.port` of the talker, that is listened to */
  on?: string | undefined;
  recordTo?: string | undefined;
  onNews?: (news: LiveNews) => void;
  /** the program that sends, where it is not the system’s cansend */
  askCommand?: string;
}): Listening => {
  const nowMs = steadyClock();
  const recorder = recordTo === undefined ? undefined : startRecorder(recordTo);
  let asking: BusAsking | undefined;
  let end: () => void = () => undefined;
  const ended = new Promise<void>((resolve) => {
    end = resolve;
  });
  let recordingStopped = false;

  const live = startLiveBoat({
    boat,
    plan,
    sourceSays: source.says,
    startMs: nowMs(),
    on,
    onLine: (line, atMs) => recorder?.line(line, atMs),
    onFrame: (frame, atMs) => asking?.take(frame, atMs),
    onNews: (news) => {
      // what was found is found again in the recording itself
      if (news.of === 'source' || news.of === 'sent') recorder?.note(news.says, news.atMs);
      onNews?.(news);
    },
  });

  const timer = setInterval(() => {
    const recording = recorder?.state();
    if (recording?.kind === 'stopped' && !recordingStopped) {
      recordingStopped = true;
      live.note('source', recording.says, nowMs());
    }
    live.tick(nowMs());
  }, tickMs);

  source.start(
    (bytes) => live.bytes(bytes, nowMs()),
    (link) => {
      live.link(link, nowMs());
      if (link.kind === 'ended') end();
    },
  );

  return {
    snapshot: () => ({
      ...live.snapshot(nowMs()),
      ...(recorder === undefined ? {} : { recording: recorder.state() }),
      ...(asking === undefined ? {} : { isAsking: true as const }),
    }),
    curve: (reading) => live.curve(reading, nowMs()),
    report: () => live.report(),
    ask({ line, isThorough }) {
      if (asking !== undefined) return;
      const begun = askBus({
        line,
        isThorough,
        nowMs,
        onSent: (frame) => live.note('sent', `Sent on ${line}: ${frameText(frame)}, ${frame.says}.`, nowMs()),
        ...(askCommand === undefined ? {} : { command: askCommand }),
      });
      asking = begun;
      void begun.done.then((why) => {
        asking = undefined;
        if (why !== undefined) live.note('sent', why, nowMs());
      });
    },
    ended,
    stop: async () => {
      clearInterval(timer);
      asking?.stop();
      await source.stop();
      await recorder?.stop();
    },
  };
};
