import type { Boat, Kit } from './boat-schema.ts';

/** The last phase of the refit: the one that lines, power and shopping are planned for. */
export const lastPhase = (boat: Boat): number => Math.max(1, ...boat.kit.map((unit) => unit.phase ?? 1));

/** A unit that comes is aboard from its phase on, one that goes before it, one that stays always; absent phase = 1. */
export const isAboard = (unit: Kit, phase: number): boolean => {
  const own = unit.phase ?? 1;
  switch (unit.fate) {
    case 'stays':
      return true;
    case 'comes':
      return phase >= own;
    case 'goes':
      return phase < own;
  }
};
