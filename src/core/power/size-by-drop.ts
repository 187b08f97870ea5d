import type { ConductorSystem } from '../facts/ampacity.ts';
import { dropConstants } from '../facts/conductors.ts';
import { ohmPerKmAt, workingC } from './conductor-ohm.ts';
import { type AwgAreas, type Conductor, conductorsOf } from './conductors-of.ts';
import { dropByOhmV } from './drop-by-ohm.ts';
import { feetOfM } from './drop-rules.ts';
import { within } from './within.ts';

/** A conductor's task as far as volts go. */
export interface DropAsk {
  readonly system: ConductorSystem;
  readonly currentA: number;
  /** out and back */
  readonly loopM: number;
  /** that may be lost on the way out and back */
  readonly dropV: number;
  readonly engineSpace: boolean;
  readonly areas?: AwgAreas;
}

/**
 * The thinnest conductor that loses no more than the volts allowed, by drop alone; undefined where the thickest loses more.
 * A gauge is sized by the published rule, K = 10.75 on its least area (the rule has no temperature); a metric size by the
 * largest resistance tinned class 5 wire may have at 30 °C, in an engine space at 50 °C. No tolerance, as printed tables
 * have.
 *
 * @example sizeByDrop({ system: 'awg', currentA: 10, loopM: 6.4008, dropV: 0.36, engineSpace: false })?.size // '10'
 */
export const sizeByDrop = (ask: DropAsk): Conductor | undefined =>
  conductorsOf(ask.system, ask.areas).find((conductor) =>
    within({ value: sizingDropV(ask, conductor), limit: ask.dropV }),
  );

/** The volts a size is picked by. */
const sizingDropV = (
  { currentA, loopM, engineSpace }: Pick<DropAsk, 'currentA' | 'loopM' | 'engineSpace'>,
  { system, circularMils, ohmPerKm20 }: Conductor,
): number =>
  system === 'awg'
    ? (dropConstants.abycCircularMils.value * currentA * feetOfM(loopM)) / circularMils
    : dropByOhmV({ currentA, loopM, ohmPerKm: ohmPerKmAt({ ohmPerKm20, tempC: workingC(engineSpace) }) });
