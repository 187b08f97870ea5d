import { dropConstants, workingTemperatures } from '../facts/conductors.ts';
import { copper } from '../facts/copper.ts';

/**
 * Resistance of a conductor at a temperature: R(t) = R20 (230 + t) / 250, the rule of the cable standard
 * (IEC 60228, second-hand), which lies within a hundredth of pure copper between 0 and 80 °C.
 *
 * @example ohmPerKmAt({ ohmPerKm20: 13.7, tempC: 50 }) // 15.344
 */
export const ohmPerKmAt = ({ ohmPerKm20, tempC }: { readonly ohmPerKm20: number; readonly tempC: number }): number => {
  const baseC = dropConstants.temperatureBase.value;
  return (ohmPerKm20 * (baseC + tempC)) / (baseC + copper.referenceC.value);
};

/** The temperature a conductor is reckoned at where it works, °C: warmer in an engine space. */
export const workingC = (engineSpace: boolean): number =>
  (engineSpace ? workingTemperatures.engineSpace : workingTemperatures.elsewhere).value;
