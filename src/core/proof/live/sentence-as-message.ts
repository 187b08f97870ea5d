import { decodeParts } from '../decode/decode-sentence.ts';
import type { DecodedValue, ValueReference } from '../decode/decoded-value.ts';
import { messageForms, referencesOf } from '../decode/message-quantities.ts';
import type { FieldValues } from '../decode/read-field.ts';
import { windReferenceOf } from '../decode/sentence-instruments.ts';
import type { SentenceParts } from '../decode/sentence-parts.ts';

/** What a sentence says, as the message of the bus that says the same would have it. */
export interface AsMessage {
  readonly pgn: number;
  readonly values: FieldValues;
}

/** The message that says the same; where a sentence is about several things, the one it is shown for. */
const messageOf: ReadonlyMap<string, number> = new Map([
  ['DBT', 128_267],
  ['DPT', 128_267],
  ['GGA', 129_029],
  ['GLL', 129_025],
  ['HDG', 127_250],
  ['HDM', 127_250],
  ['HDT', 127_250],
  ['MTW', 130_312],
  ['MWV', 130_306],
  ['RMC', 129_026],
  ['ROT', 127_251],
  ['RSA', 127_245],
  ['THS', 127_250],
  ['VHW', 128_259],
  ['VLW', 128_275],
  ['VTG', 129_026],
  ['XTE', 129_283],
]);

const referred = (pgn: number, field: string, reference: ValueReference | undefined): FieldValues =>
  reference === undefined ? {} : { [field]: referencesOf(pgn).indexOf(reference) };

/** Values under the names their fields have in a message; of several of one quantity the first. */
const fieldsOf = (pgn: number, told: readonly DecodedValue[]): FieldValues => {
  const values: Record<string, number> = {};
  for (const { quantity, field, reference } of messageForms.get(pgn)?.values ?? []) {
    const found = told.find((one) => one.quantity === quantity);
    if (found === undefined) continue;
    values[field] = found.value;
    if (reference !== undefined && 'field' in reference)
      Object.assign(values, referred(pgn, reference.field, found.reference));
  }
  return values;
};

/** The message of the bus that says what a sentence says, with no values where it tells none; undefined where none does. */
export const sentenceAsMessage = (parts: SentenceParts): AsMessage | undefined => {
  const pgn = messageOf.get(parts.formatter);
  if (pgn === undefined) return undefined;
  // an empty sentence still is about the one wind or the other
  const about = parts.formatter === 'MWV' ? referred(pgn, 'reference', windReferenceOf(parts.fields[1])) : {};
  return { pgn, values: { ...about, ...fieldsOf(pgn, decodeParts(parts)) } };
};
