import type { BoatIndex } from '../boat/boat-index.ts';
import type { Charger } from '../boat/supply.ts';
import type { DayPart } from '../facts/day-duty.ts';

/** What charges a bank in a part of a day: under engine its alternators, alongside a charger on the mains. */
const chargesIn = { motoring: ['alternator', 'dcdc'], alongside: ['mains', 'dcdc'] } as const satisfies Partial<
  Record<DayPart, readonly Charger['kind'][]>
>;

/**
 * Parts of a day in which nothing charges a bank: at anchor, under sail, and any in which the file names chargers and none of
 * the kind for this bank. Sun and wind charge when they like, so nothing is reckoned with them.
 */
export const unchargedParts = (index: BoatIndex, bank: string | undefined): readonly DayPart[] => {
  const { chargers } = index.boat.supply;
  const charged = (part: keyof typeof chargesIn): boolean =>
    chargers === undefined ||
    chargers.some(({ kind, charges }) => charges.includes(bank ?? '') && chargesIn[part].some((some) => some === kind));
  return ['anchor', 'sailing', ...(['motoring', 'alongside'] as const).filter((part) => !charged(part))];
};
