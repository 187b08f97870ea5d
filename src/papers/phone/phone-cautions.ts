import { cautions } from '../../core/facts/cautions.ts';

/** What is said where work can hurt somebody. */
export interface PhoneCaution {
  readonly hazard: string;
  readonly text: string;
}

/** The cautions of some ids, each once, in the order of the facts. */
export const cautionsNamed = (ids: readonly string[]): Readonly<Record<string, PhoneCaution>> => {
  const named = new Set(ids);
  return Object.fromEntries(
    cautions.filter(({ id }) => named.has(id)).map(({ id, hazard, text }) => [id, { hazard, text }]),
  );
};
