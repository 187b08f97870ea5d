import { byCodeUnit } from '../../../core/units/by-code-unit.ts';

const parts = (id: string): readonly [string, number] => {
  const [, word = id, digits = ''] = /^(.*?)(\d*)$/.exec(id) ?? [];
  return [word, digits === '' ? -1 : Number(digits)];
};

/** Ids of ways as a person counts them: g2 before g10. */
export const byWayId = (a: string, b: string): number => {
  const [[wordA, numberA], [wordB, numberB]] = [parts(a), parts(b)];
  return byCodeUnit(wordA, wordB) || numberA - numberB || byCodeUnit(a, b);
};
