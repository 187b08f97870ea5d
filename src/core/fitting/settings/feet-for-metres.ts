import { settingFigures } from '../../facts/setting-figures.ts';

const { 'draft-share-most': share, 'feet-ratio-least': least, 'feet-ratio-most': most } = settingFigures;

/** What a figure looks like beside what it should be, both in metres. */
export type UnitSlip = 'feet-as-metres' | 'metres-as-feet';

/**
 * Whether a figure looks as if feet were typed as metres, or metres as feet: about 3.28 times what it should be, or as much too
 * small. Signs do not count; nothing is said of what should be nothing.
 *
 * @example unitSlip({ typedM: 9, wantedM: 2.75 }) // 'feet-as-metres'
 */
export const unitSlip = ({ typedM, wantedM }: { typedM: number; wantedM: number }): UnitSlip | undefined => {
  const [typed, wanted] = [Math.abs(typedM), Math.abs(wantedM)];
  if (typed === 0 || wanted === 0) return undefined;
  const ratio = typed / wanted;
  if (ratio >= least.value && ratio <= most.value) return 'feet-as-metres';
  return 1 / ratio >= least.value && 1 / ratio <= most.value ? 'metres-as-feet' : undefined;
};

/** Whether a draft is so large a share of the length that it must be feet typed as metres. */
export const isDraftInFeet = ({ lengthM, draftM }: { lengthM: number; draftM: number }): boolean =>
  draftM > share.value * lengthM;
