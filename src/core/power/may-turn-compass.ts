import type { Sheet } from '../boat/sheet.ts';

/** Whether a unit of which no plate was read may turn a compass: what only feels something has no magnet to speak of. */
export const mayTurnCompass = ({ kind, power = [] }: Pick<Sheet, 'kind' | 'power'>): boolean =>
  power.some(({ max }) => max > 0) && !/(^|-)(sensor|sender|transducer)$/.test(kind);
