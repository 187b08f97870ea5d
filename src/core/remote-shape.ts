import * as z from 'zod';
import { commandIds } from './facts/remote-figures.ts';

// The part of a plan that tells who can reach what by radio or from ashore.
const id = z.string();

/** Something that can be commanded from afar. */
const commandSchema = z.strictObject({
  what: z.enum(commandIds),
  /** the port that takes the order, `kit.port` */
  at: id,
  /** ports the order passes, from the way in on */
  by: z.array(id),
  /** the unit that writes it on to a bus or line */
  through: id,
  /**
   * `said`: sheet or owner say that it writes. `taken`: a converter of which nobody has said. `perhaps`: a unit that sends
   * such orders itself, and could be worked from a phone.
   */
  known: z.enum(['said', 'taken', 'perhaps']),
});
export type RemoteCommand = z.infer<typeof commandSchema>;

/** A converter between the network of a way in and a bus or line of the boat. */
const gateSchema = z.strictObject({
  /** its port on the bus or line, `kit.port` */
  port: id,
  /** the buses and joins it stands on */
  onto: z.array(id),
  writes: z.enum(['listen-only', 'may-write', 'unknown']),
});
export type RemoteGate = z.infer<typeof gateSchema>;

/**
 * One way into the boat’s data: a wifi, a unit that joins her to the shore, a phone that belongs to her. `network`: units
 * that hear it at their network side. `writes`: the worst of its gates and commands, `nothing` where none is in reach.
 */
export const remoteEntrySchema = z.strictObject({
  kit: id,
  port: z.exactOptional(id),
  by: z.enum(['wifi', 'cellular', 'satellite', 'phone']),
  /** guests are let on to it */
  guests: z.boolean(),
  network: z.array(id),
  gates: z.array(gateSchema),
  commands: z.array(commandSchema),
  writes: z.enum(['may-write', 'unknown', 'listen-only', 'nothing']),
});
export type RemoteEntry = z.infer<typeof remoteEntrySchema>;

/** What a plan says of ways in. */
export const remoteEntriesSchema = { remote: z.array(remoteEntrySchema) };
export type RemoteParts = { readonly remote: RemoteEntry[] };
