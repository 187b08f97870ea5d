import type { Need } from '../boat-schema.ts';

type WhichNeed = Pick<Need, 'reading' | 'instance' | 'at'>;

/** Whether two needs are for the same reading, instance and unit. */
export const isSameNeed = (a: WhichNeed, b: WhichNeed): boolean =>
  a.reading === b.reading && a.instance === b.instance && a.at === b.at;

/** A need in a few words: `engine 1 at display`. */
export const needInWords = ({ reading, instance, at }: WhichNeed): string =>
  `${reading}${instance === undefined ? '' : ` ${instance}`} at ${at}`;
