import { messageField } from '../../src/core/facts/message-fields.ts';
import { pgnInfo } from '../../src/core/facts/pgns.ts';
import { carriesInstance } from '../../src/core/proof/decode/message-part.ts';
import type { InventedDevice } from './invented-bus.ts';
import type { InventedName } from './payloads.ts';

/** One message of an invented device that does what a plan says. */
export interface PlannedMessage {
  readonly pgn: number;
  readonly everyMs: number;
  /** of several tanks, engines or batteries: which, by number */
  readonly numbers?: readonly { readonly reading: string; readonly instance: number }[];
  /** values of fields other than the usual ones */
  readonly values?: Values;
  /** values that move, by how often the message was sent before; NaN = not available */
  readonly valuesAt?: (count: number) => Values;
}

export type Values = Readonly<Record<string, number>>;

const bitsOf = (field: NonNullable<ReturnType<typeof messageField>>, value: number): bigint => {
  const ones = (1n << BigInt(field.bits)) - 1n;
  if (Number.isNaN(value)) return field.signed ? ones >> 1n : ones;
  const raw = BigInt(Math.round((value - field.offset) / field.resolution));
  return raw < 0n ? raw + (1n << BigInt(field.bits)) : raw;
};

/** A message with the named fields filled and all others “not available”. */
export const messageOf = (pgn: number, values: Values, bytes: number): Uint8Array => {
  let whole = (1n << BigInt(bytes * 8)) - 1n;
  for (const [id, value] of Object.entries(values)) {
    const field = messageField(pgn, id);
    if (field === undefined) throw new Error(`no field ${id} in ${pgn}`);
    const mask = ((1n << BigInt(field.bits)) - 1n) << BigInt(field.firstBit);
    whole = (whole & ~mask) | ((bitsOf(field, value) << BigInt(field.firstBit)) & mask);
  }
  return Uint8Array.from({ length: bytes }, (_unused, at) => Number((whole >> BigInt(at * 8)) & 0xffn));
};

/** What an invented boat at anchor sees, by message; positions are invented. */
const usual: Readonly<Record<number, Values>> = {
  126992: { time: 36_000 },
  127245: { position: 0.05 },
  127250: { heading: 1.2, reference: 1, variation: -0.054 },
  127251: { rate: 0.01 },
  127257: { pitch: 0.02, roll: 0.01 },
  127258: { variation: -0.054 },
  127488: { speed: 800 },
  127489: { temperature: 350 },
  127505: { level: 50, capacity: 120, type: 0 },
  127506: { stateOfCharge: 80, dcType: 0 },
  127508: { voltage: 12.8, current: -4 },
  128259: { speedWaterReferenced: 2.5 },
  128267: { depth: 8.2, offset: 0.4 },
  128275: { log: 1_852_000 },
  129025: { latitude: 54.1, longitude: -10.2 },
  129026: { cog: 1.9, sog: 2.6, cogReference: 0 },
  129029: { latitude: 54.1, longitude: -10.2 },
  129283: { xte: 12 },
  129284: { distanceToWaypoint: 900, courseBearingReference: 0 },
  130306: { windSpeed: 6, windAngle: 0.8, reference: 2 },
  130310: { waterTemperature: 288 },
  130311: { temperature: 288, temperatureSource: 0 },
  130312: { actualTemperature: 288, source: 0 },
  130313: { actualHumidity: 60 },
  130314: { pressure: 101_300 },
  130316: { temperature: 288, source: 0 },
};

/** A message as an invented unit sends it. */
const payloadOf = ({ pgn, values }: PlannedMessage, more: Values): Uint8Array => {
  const filled = { ...usual[pgn], ...more, ...values };
  const bytes = pgnInfo(pgn)?.planBytes ?? 8;
  return Object.keys(filled).length === 0 ? new Uint8Array(bytes) : messageOf(pgn, filled, bytes);
};

/** Class and function a unit of a kind claims (source: pgn-database). */
const codes: Readonly<Record<string, readonly [classCode: number, functionCode: number]>> = {
  ais: [60, 195],
  alarm: [120, 140],
  'battery-monitor': [35, 170],
  'power-control': [30, 150],
  converter: [25, 135],
  'depth-sensor': [60, 135],
  display: [120, 130],
  gateway: [50, 160],
  'heading-sensor': [40, 160],
  instrument: [80, 150],
  multiplexer: [25, 133],
  'mob-unit': [20, 135],
  'pilot-computer': [40, 150],
  'pilot-head': [40, 130],
  'position-antenna': [60, 145],
  recorder: [20, 140],
  'switch-panel': [110, 135],
  'tank-adapter': [75, 150],
  'temperature-sensor': [75, 130],
  'vhf-radio': [70, 190],
  'wind-sensor': [85, 130],
};

/** The NAME of an invented unit of a kind. */
export const nameOfKind = (kind: string, unique: number): InventedName => {
  const [classCode, functionCode] = codes[kind] ?? [80, 190];
  return { unique, makerCode: 2001, classCode, functionCode };
};

/** An invented device of a kind at an address, that sends these messages. */
export const plannedDevice = ({
  kind,
  address,
  unique = address,
  sends,
}: {
  kind: string;
  address: number;
  unique?: number;
  sends: readonly PlannedMessage[];
}): InventedDevice => ({
  address,
  name: nameOfKind(kind, unique),
  product: { model: 'INVENTED', len: 1 },
  sends: sends.flatMap((message) => {
    const { pgn, everyMs, numbers = [] } = message;
    const each = carriesInstance(pgn) && numbers.length === 0 ? [{ reading: '', instance: 0 }] : numbers;
    const priority = pgnInfo(pgn)?.priority ?? 6;
    if (each.length === 0)
      return [{ pgn, priority, everyMs, payload: (count) => payloadOf(message, message.valuesAt?.(count) ?? {}) }];
    return each.map(({ reading, instance }) => ({
      pgn,
      priority,
      everyMs,
      payload: (count) =>
        payloadOf(message, {
          instance,
          ...(reading === 'water-level' ? { type: 1 } : {}),
          ...message.valuesAt?.(count),
        }),
    }));
  }),
});
