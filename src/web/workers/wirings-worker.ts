import { config } from 'zod';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { wiringCount, wiringsOf } from '../../core/joins/proposing/wirings.ts';
import type { WiringsReply } from './wirings-reply.ts';

// The page forbids code made from text; without this zod would try it and the browser would log a refusal.
config({ jitless: true });

const say = (reply: WiringsReply): void => postMessage(reply);

/** Compares ways to wire one boat, each told as soon as it is known; who has seen enough ends the worker. */
addEventListener('message', ({ data: boat }: MessageEvent<Boat>) => {
  say({ kind: 'count', count: wiringCount(boat) });
  for (const wiring of wiringsOf(boat)) say({ kind: 'wiring', wiring });
  say({ kind: 'done' });
});
