import { fieldRows, lookupRows, textRows } from './generated/message-fields.ts';
import type { SourceKey } from './sources.ts';

/** One field of a message: where its bits stand and what they are worth. */
export interface MessageField {
  readonly pgn: number;
  /** its name in the database, `windSpeed` */
  readonly id: string;
  /** counted from bit 0 of byte 0, least significant first */
  readonly firstBit: number;
  readonly bits: number;
  readonly signed: boolean;
  /** value = raw x resolution + offset */
  readonly resolution: number;
  readonly offset: number;
  /** least and largest value; what lies outside says "not available" or "error" */
  readonly least: number;
  readonly largest: number;
  /** as the database writes it: rad, m/s, K, Pa … */
  readonly unit?: string;
  readonly lookup?: string;
  readonly source: SourceKey;
}

const fieldOf = ([
  pgn,
  id,
  firstBit,
  bits,
  signed,
  resolution,
  offset,
  least,
  largest,
  unit,
  lookup,
]: (typeof fieldRows)[number]): MessageField => ({
  pgn,
  id,
  firstBit,
  bits,
  signed: signed === 1,
  resolution,
  offset,
  least,
  largest,
  ...(unit === '' ? {} : { unit }),
  ...(lookup === '' ? {} : { lookup }),
  source: 'pgn-database',
});

const fields: ReadonlyMap<string, MessageField> = new Map(
  fieldRows.map((row) => [`${row[0]} ${row[1]}`, fieldOf(row)]),
);

const lookups: ReadonlyMap<string, ReadonlyMap<number, string>> = new Map(
  lookupRows.map(([name, values]) => [name, new Map(values)]),
);

/**
 * A field of a message by the database’s names, or undefined when the table has no such field.
 *
 * @example messageField(128267, 'depth') // { firstBit: 8, bits: 32, resolution: 0.01, unit: 'm', … }
 */
export const messageField = (pgn: number, id: string): MessageField | undefined => fields.get(`${pgn} ${id}`);

/**
 * What a value of a lookup field means, in the database’s words; undefined for a value it has no word for.
 *
 * @example lookupWord('WIND_REFERENCE', 2) // 'Apparent'
 */
export const lookupWord = (lookup: string, value: number): string | undefined => lookups.get(lookup)?.get(value);

/** Room of a text in a message. */
export interface MessageText {
  readonly firstByte: number;
  readonly bytes: number;
  readonly source: SourceKey;
}

const texts: ReadonlyMap<string, MessageText> = new Map(
  textRows.map(([pgn, id, firstByte, bytes]) => [`${pgn} ${id}`, { firstByte, bytes, source: 'pgn-database' }]),
);

/** Where a text of fixed room stands in a message, by the database’s names; undefined when the table has none such. */
export const messageText = (pgn: number, id: string): MessageText | undefined => texts.get(`${pgn} ${id}`);
