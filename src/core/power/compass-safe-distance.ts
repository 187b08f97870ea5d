import { compassLimits, safeDistanceStep, wireFieldConstant } from '../facts/compass-figures.ts';

/** A standard compass, or one that is steered by, a standby or an emergency one. */
export type CompassKind = 'standard' | 'steering';

/** How far a wire must keep from a compass. */
export interface CompassDistance {
  /** the field that turns the compass as far as it may be turned */
  readonly limitFieldUt: number;
  readonly distanceM: number;
  /** rounded up to the next 5 cm, to print */
  readonly shownM: number;
}

/**
 * Distance at which a wire turns a compass no more than allowed: 5.4/H degrees on a standard compass, 18/H on a steering one
 * (ISO 25862, second-hand). As a field that is the same everywhere: 0.094 and 0.314 µT.
 *
 * @example compassSafeDistance({ currentA: 5, compass: 'steering' }).distanceM // 3.183
 */
export const compassSafeDistance = ({
  currentA,
  compass,
  pairSpacingM,
}: {
  readonly currentA: number;
  readonly compass: CompassKind;
  readonly pairSpacingM?: number;
}): CompassDistance => {
  const limitFieldUt = (compassLimits[compass].value * Math.PI) / 180;
  const singleM = (wireFieldConstant.value * currentA) / limitFieldUt;
  const distanceM =
    pairSpacingM === undefined || currentA === 0 ? singleM : Math.sqrt(singleM * pairSpacingM + pairSpacingM ** 2 / 4);
  const steps = 1 / safeDistanceStep.value;
  return { limitFieldUt, distanceM, shownM: Math.ceil(distanceM * steps - 1e-9) / steps };
};
