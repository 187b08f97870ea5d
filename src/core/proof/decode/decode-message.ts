import { messageField } from '../../facts/message-fields.ts';
import type { DecodedValue, ValueReference } from './decoded-value.ts';
import { type MessageQuantity, messageForms, referencesOf } from './message-quantities.ts';
import { fieldReader } from './read-field.ts';

type Reader = (payload: Uint8Array) => number | undefined;

const never: Reader = () => undefined;

const readerOf = (pgn: number, id: string | undefined): Reader => {
  const field = id === undefined ? undefined : messageField(pgn, id);
  return field === undefined ? never : fieldReader(field);
};

const waterAndAir = 130_310;
const waterKind = 0;
const outsideKind = 1;
const dates: ReadonlySet<number> = new Set([126_992, 129_029, 129_033]);
const secondsInDay = 86_400;

type Decoder = (payload: Uint8Array) => DecodedValue[];

const referenceReader = (
  pgn: number,
  { reference }: MessageQuantity,
): ((payload: Uint8Array) => ValueReference | undefined) => {
  if (reference === undefined) return () => undefined;
  if ('always' in reference) return () => reference.always;
  const read = readerOf(pgn, reference.field);
  const references = referencesOf(pgn);
  return (payload) => references[read(payload) ?? -1];
};

const partsOf = (instance: number | undefined, kind: number | undefined) => ({
  ...(instance === undefined ? {} : { instance }),
  ...(kind === undefined ? {} : { kind }),
});

const formDecoder = (pgn: number): Decoder => {
  const form = messageForms.get(pgn);
  if (form === undefined) return () => [];
  const instanceOf = readerOf(pgn, form.instance);
  const kindOf = readerOf(pgn, form.kind);
  const readers = form.values.map((one) => ({
    quantity: one.quantity,
    read: readerOf(pgn, one.field),
    referenceOf: referenceReader(pgn, one),
  }));
  return (payload) => {
    const parts = partsOf(instanceOf(payload), kindOf(payload));
    return readers.flatMap(({ quantity, read, referenceOf }) => {
      const value = read(payload);
      if (value === undefined) return [];
      const reference = referenceOf(payload);
      return [{ quantity, value, ...(reference === undefined ? {} : { reference }), ...parts }];
    });
  };
};

/** Date and time of a message as seconds since 1970; without both there is none. */
const timeDecoder = (pgn: number): Decoder => {
  const day = readerOf(pgn, 'date');
  const clock = readerOf(pgn, 'time');
  const zone = readerOf(pgn, pgn === 129_033 ? 'localOffset' : undefined);
  return (payload) => {
    const [days, seconds, offset] = [day(payload), clock(payload), zone(payload)];
    return [
      ...(days === undefined || seconds === undefined
        ? []
        : [{ quantity: 'unix-time', value: days * secondsInDay + seconds } as const]),
      ...(offset === undefined ? [] : [{ quantity: 'zone-offset', value: offset } as const]),
    ];
  };
};

/** The older message of the weather has one temperature of the water and one of the air. */
const waterAndAirDecoder = (): Decoder => {
  const temperatures = [
    { kind: waterKind, read: readerOf(waterAndAir, 'waterTemperature') },
    { kind: outsideKind, read: readerOf(waterAndAir, 'outsideAmbientAirTemperature') },
  ];
  return (payload) =>
    temperatures.flatMap(({ kind, read }) => {
      const value = read(payload);
      return value === undefined ? [] : [{ quantity: 'temperature', value, kind } as const];
    });
};

const decoderOf = (pgn: number): Decoder => {
  const more = [...(dates.has(pgn) ? [timeDecoder(pgn)] : []), ...(pgn === waterAndAir ? [waterAndAirDecoder()] : [])];
  const main = formDecoder(pgn);
  return more.length === 0 ? main : (payload) => [main, ...more].flatMap((decode) => decode(payload));
};

const decodable: ReadonlySet<number> = new Set([...messageForms.keys(), ...dates]);
const decoders = new Map<number, Decoder>();

/** Whether a message of this number has values that are read. */
export const isDecoded = (pgn: number): boolean => decodable.has(pgn);

/**
 * The values a whole message holds, each with its reference, instance and kind; "not available" and what the message is
 * too short for are left out. None for a number that is not read.
 *
 * @example decodeMessage(127250, payload) // [{ quantity: 'heading', value: 2.3154, reference: 'magnetic' }]
 */
export const decodeMessage = (pgn: number, payload: Uint8Array): readonly DecodedValue[] => {
  if (!decodable.has(pgn)) return [];
  const known = decoders.get(pgn);
  if (known !== undefined) return known(payload);
  const decode = decoderOf(pgn);
  decoders.set(pgn, decode);
  return decode(payload);
};
