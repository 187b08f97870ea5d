import { aisFields } from '../../facts/fitting-limits.ts';

/** A boat and where the position antenna of her AIS stands, metres. */
export interface AisPlacement {
  readonly lengthM: number;
  readonly beamM: number;
  readonly fromBowM: number;
  readonly fromPortM: number;
}

/** The four sizes of the AIS static data, whole metres: bow, stern, port and starboard, from the position antenna. */
export interface AisSize {
  readonly bowM: number;
  readonly sternM: number;
  readonly portM: number;
  readonly starboardM: number;
}

const rounded = (valueM: number): number => Math.floor(Math.max(0, valueM) + 0.5);
const within = (valueM: number, mostM: number): number => Math.min(valueM, mostM);

/** The sizes as their fields can hold them: bow and stern to 511 m, the sides to 63 m. */
export const aisSizeFields = ({ bowM, sternM, portM, starboardM }: AisSize): AisSize => ({
  bowM: within(bowM, aisFields.bowMostM),
  sternM: within(sternM, aisFields.sternMostM),
  portM: within(portM, aisFields.portMostM),
  starboardM: within(starboardM, aisFields.starboardMostM),
});

/**
 * The size block from the place of the antenna: length, beam, A and C rounded, half up; B = length - A, D = beam - C; where A and
 * C would both be 0, which means that the antenna is not known, A is 1. Length and beam so stay what they are.
 *
 * @example aisSize({ lengthM: 12.4, beamM: 3.9, fromBowM: 9.8, fromPortM: 1.9 }) // 10, 2, 2, 2
 */
export const aisSize = ({ lengthM, beamM, fromBowM, fromPortM }: AisPlacement): AisSize => {
  const [length, beam] = [rounded(lengthM), rounded(beamM)];
  const [bow, port] = [within(rounded(fromBowM), length), within(rounded(fromPortM), beam)];
  const bowM = bow === 0 && port === 0 ? 1 : bow;
  return aisSizeFields({ bowM, sternM: Math.max(0, length - bowM), portM: port, starboardM: beam - port });
};

/** What a size block says: all of it, the size only, or nothing. */
export const aisSizeMeaning = ({ bowM, sternM, portM, starboardM }: AisSize): 'whole' | 'size-only' | 'nothing' => {
  if (bowM !== 0 || portM !== 0) return 'whole';
  return sternM === 0 && starboardM === 0 ? 'nothing' : 'size-only';
};

const stepsPerM = 1 / aisFields.draughtStepM;

/** The draught field: tenths of a metre, rounded up, at most 255. A thousandth over a step is still that step. */
export const aisDraughtField = (draftM: number): number =>
  within(Math.ceil(Number((draftM * stepsPerM).toFixed(6))), Math.round(aisFields.draughtMostM * stepsPerM));
