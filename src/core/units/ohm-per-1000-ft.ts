import { inchesInFoot, inchM } from './foot.ts';

/** Ohm per metre of a conductor printed in ohm per 1000 ft. */
export const ohmPerMOfPer1000Ft = (ohmPer1000Ft: number): number => ohmPer1000Ft / (1000 * inchesInFoot * inchM);
