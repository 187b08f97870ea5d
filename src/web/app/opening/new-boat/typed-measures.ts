import type { HullMeasuresId } from '../../../../core/facts/hull-measures.ts';
import type { PatternAsked } from '../../../../core/starting/boat-from-pattern.ts';
import { type HullMeasuresM, suggestedMeasures } from '../../../../core/starting/suggested-measures.ts';
import { parseLength } from '../../../../core/units/parse-length.ts';

/** The four measures in the order they are asked for. */
export const measureKeys = [
  'lengthM',
  'beamM',
  'draftM',
  'airDraftM',
] as const satisfies readonly (keyof HullMeasuresM)[];
export type MeasureKey = (typeof measureKeys)[number];

/** One measure as it stands in the form. */
export interface TypedMeasure {
  readonly key: MeasureKey;
  /** what counts now: typed, else suggested */
  readonly valueM: number;
  readonly from: 'typed' | 'suggested' | 'wrong';
}

/** What was typed for each measure; nothing for one that is left to be suggested. */
export type MeasureTexts = Readonly<Partial<Record<MeasureKey, string>>>;

const lengthOf = (text: string | undefined): number | undefined | 'wrong' =>
  text === undefined || text.trim() === '' ? undefined : (parseLength(text) ?? 'wrong');

/**
 * The measures of a boat as somebody types them: what is left empty is suggested from the length, or from a usual one.
 *
 * @example typedMeasures('ketch', { lengthM: '39 ft' })[1] // { key: 'beamM', valueM: 3.65, from: 'suggested' }
 */
export const typedMeasures = (pattern: HullMeasuresId, texts: MeasureTexts): readonly TypedMeasure[] => {
  const lengthM = lengthOf(texts.lengthM);
  const suggested = suggestedMeasures({ pattern, ...(typeof lengthM === 'number' && lengthM > 0 ? { lengthM } : {}) });
  return measureKeys.map((key): TypedMeasure => {
    const typed = lengthOf(texts[key]);
    if (typeof typed === 'number') return { key, valueM: typed, from: 'typed' };
    return { key, valueM: suggested[key], from: typed === 'wrong' ? 'wrong' : 'suggested' };
  });
};

/** What is asked of a boat by what was typed: only what was typed counts as given. */
export const askedBy = (given: {
  readonly pattern: HullMeasuresId;
  readonly name: string;
  readonly texts: MeasureTexts;
}): PatternAsked => {
  const typed = typedMeasures(given.pattern, given.texts).filter(({ from }) => from === 'typed');
  return {
    pattern: given.pattern,
    name: given.name,
    ...Object.fromEntries(typed.map(({ key, valueM }) => [key, valueM])),
  };
};
