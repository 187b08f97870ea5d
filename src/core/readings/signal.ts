import type { Port, Reference, Sends } from '../boat/sheet.ts';
import type { MessageReading } from '../facts/message-readings.ts';
import { pgnInfo } from '../facts/pgns.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import { lostRateEveryMs, usualEveryMs } from '../facts/sentence-rates.ts';
import type { Giving } from './port-messages.ts';
import type { PortNode, TurnFrom } from './port-network.ts';

/** One reading as it leaves a port: the message it is written in and what is still known of it. */
export interface Signal {
  readonly reading: ReadingId;
  /** PGN or letters of the message; undefined where the port sends the bare reading */
  readonly message: number | string | undefined;
  readonly instance: number | undefined;
  /** undefined where nothing says how often it comes, or an event sends it */
  readonly everyMs: number | undefined;
  /** undefined where it may be any, `lost` where a turn has dropped the flag */
  readonly reference: Reference | 'lost' | undefined;
  /** undefined where the listener sets it itself, as for a bare transducer */
  readonly withOffset: boolean | undefined;
  /** language, speed and wires of the port that wrote it */
  readonly dialect: string | undefined;
  readonly baud: number | undefined;
  readonly line: Port['line'];
}

/** Equal for two signals that are the same in everything but where they are. */
export const signalKey = (signal: Signal): string =>
  [
    signal.reading,
    signal.message,
    signal.instance,
    signal.everyMs,
    signal.reference,
    signal.withOffset,
    signal.dialect,
    signal.baud,
    signal.line,
  ].join('|');

type Carry = TurnFrom['turn']['carries'][number];

/** Speed of an NMEA 0183 port whose sheet gives none, bit/s: the speed of the plain standard. */
export const usualBaud = 4800;

const usualRate = ({ pgn, sentence }: Sends): number | undefined => {
  if (pgn !== undefined) return pgnInfo(pgn)?.everyMs;
  return sentence === undefined ? undefined : usualEveryMs(sentence);
};

const written = (node: PortNode, { sent, entry }: Giving) => ({
  reading: entry.reading,
  message: sent.pgn ?? sent.sentence,
  dialect: node.port.dialect,
  baud: node.port.protocol === 'nmea0183' ? (node.port.baud ?? usualBaud) : undefined,
  line: node.port.line,
});

/**
 * What the device itself says of a reading at a port; nothing where a turn brings the reading to that port.
 * The unit's own instances come before the sheet's; an NMEA 0183 port gives none.
 */
export const ownSignals = (node: PortNode, reading: ReadingId): Signal[] => {
  if (node.carriedTo.has(reading)) return [];
  return (node.gives.get(reading) ?? []).flatMap((giving) => {
    const own = node.instances.get(reading) ?? [giving.sent.instance];
    const instances = node.port.protocol === 'nmea0183' ? [undefined] : own;
    return instances.map((instance) => ({
      ...written(node, giving),
      instance,
      everyMs: giving.sent.everyMs ?? usualRate(giving.sent),
      reference: giving.entry.reference,
      withOffset: giving.entry.withOffset,
    }));
  });
};

type InstanceTurn = { came: Signal; carry: Carry; sent: Sends; all: readonly Giving[] };

/** The instance a carried reading leaves with; `refused` where this entry of `sends` is for another one. */
const turnedInstance = (node: PortNode, { came, carry, sent, all }: InstanceTurn): number | undefined | 'refused' => {
  if (node.port.protocol === 'nmea0183') return undefined;
  const own = node.instances.get(came.reading);
  if (own?.length === 1) return own[0];
  const turned = carry.asInstance ?? (carry.loses?.includes('instance') ? undefined : came.instance);
  if (sent.instance === undefined) return turned;
  if (turned === undefined || turned === sent.instance) return sent.instance;
  // A port with one number for the reading gives that number to whatever it passes on.
  return all.every((other) => other.sent.instance === sent.instance) ? sent.instance : 'refused';
};

const turnedOffset = (came: Signal, carry: Carry, entry: MessageReading): boolean | undefined => {
  if (came.withOffset === false || entry.withOffset === false || carry.loses?.includes('offset')) return false;
  return entry.withOffset ?? came.withOffset;
};

const turnedReference = (came: Signal, carry: Carry, entry: MessageReading): Signal['reference'] => {
  if (came.reference === 'lost' || carry.loses?.includes('reference')) return 'lost';
  const reference = entry.reference ?? came.reference;
  // Depth that could be any by its offset is depth below the transducer once the offset is gone.
  return reference === undefined && carry.loses?.includes('offset') ? 'transducer' : reference;
};

const turnedRate = (came: Signal, carry: Carry, sent: Sends): number | undefined => {
  const slowest = carry.loses?.includes('rate') ? lostRateEveryMs : 0;
  const everyMs = Math.max(came.everyMs ?? 0, sent.everyMs ?? Math.max(usualRate(sent) ?? 0, slowest));
  return everyMs === 0 ? undefined : everyMs;
};

/** What leaves `node` when a turn carries `came` to it: one signal for each entry of its `sends` that gives the reading. */
export const turnedSignals = (node: PortNode, carry: Carry, came: Signal): Signal[] => {
  if (carry.reading !== came.reading) return [];
  if (carry.instance !== undefined && carry.instance !== came.instance) return [];
  const all = node.gives.get(came.reading) ?? [];
  return all.flatMap((giving) => {
    const { sent, entry } = giving;
    const instance = turnedInstance(node, { came, carry, sent, all });
    if (instance === 'refused') return [];
    return [
      {
        ...written(node, giving),
        instance,
        everyMs: turnedRate(came, carry, sent),
        reference: turnedReference(came, carry, entry),
        withOffset: turnedOffset(came, carry, entry),
      },
    ];
  });
};
