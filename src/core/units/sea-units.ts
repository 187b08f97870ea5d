import { inchesInFoot, inchM } from './foot.ts';

/** Metres in a foot, a fathom and a nautical mile, exact by definition. */
export const footM = inchesInFoot * inchM;
export const fathomM = 6 * footM;
export const nauticalMileM = 1852;

/** Metres a second in the units a log or a wind display may count in: 1 kn = 1852/3600 m/s, 1 mph = 0.44704 m/s. */
export const speedUnitMS = {
  kn: nauticalMileM / 3600,
  mph: 0.447_04,
  'km/h': 1000 / 3600,
  'm/s': 1,
} as const;
export type SpeedUnit = keyof typeof speedUnitMS;

/** Metres in the units a sounder may count in. */
export const depthUnitM = { m: 1, ft: footM, fm: fathomM } as const;

/**
 * A depth as old charts and sounders give it, in metres.
 *
 * @example metresOfDepth({ fathoms: 2, feet: 3 }) // 4.572
 */
export const metresOfDepth = ({
  fathoms = 0,
  feet = 0,
}: {
  readonly fathoms?: number;
  readonly feet?: number;
}): number => fathoms * fathomM + feet * footM;

/**
 * A speed in one unit as another has it.
 *
 * @example speedIn({ speed: 1, from: 'mph', to: 'kn' }) // 0.86898
 */
export const speedIn = ({
  speed,
  from,
  to,
}: {
  readonly speed: number;
  readonly from: SpeedUnit;
  readonly to: SpeedUnit;
}): number => (speed * speedUnitMS[from]) / speedUnitMS[to];
