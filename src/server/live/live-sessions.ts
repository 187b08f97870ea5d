import type { ServerResponse } from 'node:http';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { LiveTold } from '../../core/proof/live/live-snapshot.ts';
import { type AskOptions, type Listening, startListening } from '../../live/listening.ts';
import type { LiveSource } from '../../live/live-source.ts';
import { liveStream } from './live-stream.ts';

/** One boat that is listened to, for the pages that look on. */
interface Session {
  readonly listening: Listening;
  /** the recording’s own name, without its folder */
  readonly recording: string | undefined;
  readonly timer: NodeJS.Timeout;
  lookedAtMs: number;
}

/** What is to be listened to, and for which boat. */
export interface SessionWish {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly source: LiveSource;
  readonly on: string | undefined;
  readonly recordTo?: string;
  readonly file?: string;
}

/** The boats of this server that are listened to, at most once each. */
export interface LiveSessions {
  /** false where she is listened to already */
  begin(id: string, of: SessionWish): boolean;
  isOn(id: string): boolean;
  told(id: string): LiveTold;
  curve(id: string, reading: number): ReturnType<Listening['curve']>;
  /** false where she is not listened to */
  ask(id: string, options: AskOptions): boolean;
  /** lets a page look on; false where too many do */
  look(id: string, response: ServerResponse): boolean;
  stop(id: string): Promise<void>;
  stopAll(): Promise<void>;
}

const sendEveryMs = 500;
/** With no page looking on and nothing recorded, listening ends after so long. */
const longestUnseenMs = 600_000;

/** Starts with no boat listened to. `headers` go with every answer of the server. */
export const liveSessions = (headers: Readonly<Record<string, string>>): LiveSessions => {
  const sessions = new Map<string, Session>();
  const streams = new Map<string, ReturnType<typeof liveStream>>();

  const streamOf = (id: string): ReturnType<typeof liveStream> => {
    const found = streams.get(id) ?? liveStream(headers);
    streams.set(id, found);
    return found;
  };

  const told = (id: string): LiveTold => {
    const session = sessions.get(id);
    if (session === undefined) return { listening: false };
    const { listening, recording } = session;
    return { listening: true, ...(recording === undefined ? {} : { file: recording }), ...listening.snapshot() };
  };

  const stop = async (id: string): Promise<void> => {
    const session = sessions.get(id);
    if (session === undefined) return;
    sessions.delete(id);
    clearInterval(session.timer);
    await session.listening.stop();
    streamOf(id).send({ listening: false });
  };

  const turn = (id: string): void => {
    const session = sessions.get(id);
    if (session === undefined) return;
    const stream = streamOf(id);
    const nowMs = performance.now();
    if (stream.count() > 0) {
      session.lookedAtMs = nowMs;
      stream.send(told(id));
    } else if (session.recording === undefined && nowMs - session.lookedAtMs > longestUnseenMs) void stop(id);
  };

  return {
    begin(id, { boat, plan: planned, source, on, recordTo, file }) {
      if (sessions.has(id)) return false;
      const listening = startListening({ source, boat, plan: planned, on, recordTo });
      const timer = setInterval(() => turn(id), sendEveryMs);
      sessions.set(id, { listening, recording: file, timer, lookedAtMs: performance.now() });
      return true;
    },
    isOn: (id) => sessions.has(id),
    told,
    curve: (id, reading) => sessions.get(id)?.listening.curve(reading),
    ask(id, options) {
      const session = sessions.get(id);
      session?.listening.ask(options);
      return session !== undefined;
    },
    look(id, response) {
      const stream = streamOf(id);
      const isIn = stream.add(response);
      if (isIn) response.write(`data: ${JSON.stringify(told(id))}\n\n`);
      return isIn;
    },
    stop,
    stopAll: async () => {
      await Promise.all([...sessions.keys()].map(stop));
      for (const stream of streams.values()) stream.end();
    },
  };
};
