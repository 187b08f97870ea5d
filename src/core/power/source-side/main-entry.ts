import type { BoatIndex } from '../../boat/boat-index.ts';
import { lengthMm } from '../../boat/measure.ts';
import type { Bank, Protection } from '../../boat/supply.ts';
import { breaksA } from '../../facts/interrupt.ts';
import type { MainEntry } from '../../panels-shape.ts';
import { interruptNeeded } from '../interrupt-needed.ts';
import { allowedMm } from './main-place.ts';
import { parallelBanks } from './parallel-banks.ts';

const sumOf = (values: readonly (number | undefined)[]): number | undefined =>
  values.some((value) => value === undefined) || values.length === 0
    ? undefined
    : values.reduce<number>((sum, value) => sum + (value ?? 0), 0);

/** The banks that feed a short behind a bank, itself first, with what they can give together; absent where one is not known. */
export const faultBanks = (
  index: BoatIndex,
  bank: Bank,
): { readonly banks: readonly Bank[]; readonly crankingA?: number; readonly shortCircuitA?: number } => {
  const banks = [bank, ...parallelBanks(index, bank)];
  const [crankingA, shortCircuitA] = [
    sumOf(banks.map((one) => one.coldCrankingA)),
    sumOf(banks.map((one) => one.shortCircuitA)),
  ];
  return {
    banks,
    ...(crankingA === undefined ? {} : { crankingA }),
    ...(shortCircuitA === undefined ? {} : { shortCircuitA }),
  };
};

/** A fault current that protection must break, and what asks for it. */
export interface Needed {
  readonly amps: number;
  readonly by: MainEntry['neededBy'];
}

/** Fault current asked of protection behind a bank; where nobody has said its cranking amperes, the least there is for those known. */
export const neededBehind = (index: BoatIndex, bank: Bank, position: 'main' | 'branch'): Needed => {
  const { banks, crankingA, shortCircuitA } = faultBanks(index, bank);
  const needed = interruptNeeded({
    position,
    cca: crankingA ?? banks.reduce((sum, one) => sum + (one.coldCrankingA ?? 0), 0),
    capacityAh: banks.reduce((sum, one) => sum + one.capacityAh, 0),
    lithium: banks.some(({ chemistry }) => chemistry === 'lifepo4'),
    ...(shortCircuitA === undefined ? {} : { statedA: shortCircuitA }),
  });
  return crankingA === undefined && needed.by === 'table' ? { amps: needed.amps, by: 'no-figure' } : needed;
};

/** Fault current a protection is printed to break, else that of its kind; undefined where neither is known. */
export const givenInterruptA = ({
  interruptA,
  family,
}: Pick<Protection, 'interruptA' | 'family'>): number | undefined =>
  interruptA ?? new Map<string, { readonly amps: number }>(Object.entries(breaksA)).get(family ?? '')?.amps;

const verdict = (givenA: number | undefined, neededA: number): MainEntry['breaks'] => {
  if (givenA === undefined) return 'not-known';
  return givenA >= neededA ? 'yes' : 'no';
};

/** What the plan tells of a main: where it sits beside where it may, and what it must break beside what it does. */
export const mainEntry = ({
  main,
  ratingA,
  needed,
}: {
  readonly main: Protection | undefined;
  readonly ratingA: number | undefined;
  readonly needed: Needed;
}): MainEntry => {
  const givenA = main === undefined ? undefined : givenInterruptA(main);
  return {
    kind: main?.kind ?? 'not-known',
    ...(main?.family === undefined ? {} : { family: main.family }),
    ...(ratingA === undefined ? {} : { ratingA }),
    ...(main?.distance === undefined ? {} : { farMm: lengthMm(main.distance).longestMm }),
    allowedMm: allowedMm(main ?? {}),
    ...(main?.sheathed === undefined ? {} : { sheathed: main.sheathed }),
    neededA: needed.amps,
    neededBy: needed.by,
    ...(givenA === undefined ? {} : { givenA }),
    breaks: verdict(givenA, needed.amps),
  };
};
