import * as z from 'zod';
import { waters } from './facts/waters.ts';
import { saidRates } from './traffic/said-rate.ts';

// The part of a plan that tells what is sent on every bus and 0183 line, and how long it may wait.
const id = z.string();
const percent = z.number().meta({ unit: '%' });
const milliseconds = z.number().meta({ unit: 'ms' });
const perSecond = z.number().meta({ unit: '1/s' });
const saidRateSchema = z.enum(saidRates);

/**
 * One message of one sender. `count`: like messages, one for each tank, engine or battery; of other ships’ reports those of
 * one second. `usualMs`: the usual interval of the message, where there is one; `from`: of a message passed on, the port that
 * sends it on the other bus. `waitMs`, `waitFedSinglyMs`: the longest it may wait where its sender queues all its frames at
 * once, and where it hands the bus one at a time; absent where nothing bounds it.
 */
const sentMessageSchema = z.strictObject({
  pgn: z.int(),
  from: z.exactOptional(id),
  count: z.int(),
  everyMs: milliseconds,
  rate: saidRateSchema,
  usualMs: z.exactOptional(milliseconds),
  frames: z.int(),
  framesPerS: perSecond,
  worstPct: percent,
  waitMs: z.exactOptional(milliseconds),
  waitFedSinglyMs: z.exactOptional(milliseconds),
});
export type SentEntry = z.infer<typeof sentMessageSchema>;

/** One port on a bus and what it takes of it at the worst, `kit.port`. */
const busSenderSchema = z.strictObject({
  port: id,
  framesPerS: perSecond,
  averagePct: percent,
  worstPct: percent,
  messages: z.array(sentMessageSchema),
});
export type SenderEntry = z.infer<typeof busSenderSchema>;

/** Bus time taken at once by so many frames: every unit saying who it is, each of them asking all others, all asked what they are. */
const burstSchema = z.strictObject({
  of: z.enum(['claims', 'claims-asked', 'product-information']),
  frames: z.int(),
  busMs: milliseconds,
});

/** What is sent on one bus. `shipsPct`: reports of other ships, at the worst; they are in `worstPct` too. */
const busTrafficSchema = z.strictObject({
  bus: id,
  units: z.int(),
  averagePct: percent,
  worstPct: percent,
  shipsPct: percent,
  senders: z.array(busSenderSchema),
  bursts: z.array(burstSchema),
});
export type BusTraffic = z.infer<typeof busTrafficSchema>;

/** A sentence on a 0183 line; `from` is the port at which it begins. */
const talkedSchema = z.strictObject({
  sentence: z.string(),
  from: id,
  chars: z.int().meta({ unit: 'characters with start and CR LF' }),
  everyMs: milliseconds,
  rate: saidRateSchema,
  charsPerS: perSecond,
});

/** One talker of NMEA 0183, `kit.port`, with how full its line is; `inputs`: 0183 inputs it passes on. */
const lineTrafficSchema = z.strictObject({
  talker: id,
  joins: z.array(id),
  baud: z.int().meta({ unit: 'bit/s' }),
  inputs: z.int(),
  charsPerS: perSecond,
  sharePct: percent,
  sentences: z.array(talkedSchema),
});
export type LineTraffic = z.infer<typeof lineTrafficSchema>;

/** What a plan says of traffic; in the last phase. `waters`: by what traffic of other ships. */
export const trafficEntriesSchema = {
  traffic: z.strictObject({
    waters: z.enum(waters),
    buses: z.array(busTrafficSchema),
    lines: z.array(lineTrafficSchema),
  }),
};
