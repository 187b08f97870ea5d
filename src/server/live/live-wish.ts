import { isIP } from 'node:net';
import * as z from 'zod';
import { isBusInterface } from '../../live/ask-bus.ts';
import type { LiveSource } from '../../live/live-source.ts';
import { serialSource } from '../../live/sources/serial-source.ts';
import { tcpSource } from '../../live/sources/tcp-source.ts';
import { udpSource } from '../../live/sources/udp-source.ts';

const port = z.int().min(1).max(65_535);
const address = z.string().refine((text) => isIP(text) !== 0);
/** A name of a machine, or its address: nothing that could be taken for anything else. */
const host = z
  .string()
  .max(253)
  .refine((text) => isIP(text) !== 0 || /^[a-zA-Z0-9]([a-zA-Z0-9.-]*[a-zA-Z0-9])?$/.test(text));

const sourceSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('udp'), port, address: z.exactOptional(address) }),
  z.strictObject({ kind: z.literal('tcp'), host, port }),
  z.strictObject({
    kind: z.literal('serial'),
    path: z.string().max(300),
    baud: z.exactOptional(z.int().min(300).max(4_000_000)),
  }),
]);

/** What the page asks for when it begins to listen. */
export const listenWishSchema = z.strictObject({
  source: sourceSchema,
  /** id of the bus, or `kit.port` of the talker; absent: the one that fits best */
  on: z.exactOptional(z.string().max(200)),
  record: z.boolean(),
});
export type ListenWish = z.infer<typeof listenWishSchema>;

/** What the page asks for after a person said yes to what is sent. */
export const askWishSchema = z.strictObject({
  line: z.string().refine(isBusInterface),
  thorough: z.boolean(),
  /** a person said yes to it, this time */
  yes: z.literal(true),
});

/**
 * The source that is wished for; undefined where a serial port is none of those this machine has: no path of a request is
 * opened that was not in the list.
 */
export const wishedSource = (wish: ListenWish['source'], ports: readonly string[]): LiveSource | undefined => {
  switch (wish.kind) {
    case 'udp':
      return udpSource(wish);
    case 'tcp':
      return tcpSource(wish);
    case 'serial':
      return ports.includes(wish.path) ? serialSource(wish) : undefined;
  }
};
