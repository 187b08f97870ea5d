import { UserError } from '../boat/user-error.ts';
import { printLength } from '../units/print-length.ts';
import type { HullMeasuresM } from './suggested-measures.ts';

/** What a boat file takes (schema: hull, and a place no higher than 500 m), and what each is called. */
const ranges: readonly { key: keyof HullMeasuresM; name: string; leastM: number; mostM: number }[] = [
  { key: 'lengthM', name: 'length', leastM: 2, mostM: 60 },
  { key: 'beamM', name: 'beam', leastM: 0.5, mostM: 20 },
  { key: 'draftM', name: 'draft', leastM: 0.05, mostM: 10 },
  { key: 'airDraftM', name: 'air draft', leastM: 0.2, mostM: 200 },
];

const inBoth = (valueM: number): string =>
  `${printLength({ valueM, as: 'metres' })} (${printLength({ valueM, as: 'feet' })})`;

/**
 * The measures as they came, when a boat can have them.
 *
 * @throws UserError that names the measure and what it may be
 */
export const checkMeasures = (measures: HullMeasuresM): HullMeasuresM => {
  for (const { key, name, leastM, mostM } of ranges) {
    const valueM = measures[key];
    if (valueM >= leastM && valueM <= mostM) continue;
    throw new UserError({
      says: `The ${name} is ${Number.isFinite(valueM) ? inBoth(valueM) : 'no number'}.`,
      whatToDo: `Give one from ${inBoth(leastM)} to ${inBoth(mostM)}.`,
    });
  }
  return measures;
};
