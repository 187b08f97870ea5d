/** Metres in one inch, exact by definition; twelve inches to the foot. */
export const inchM = 0.0254;
export const inchesInFoot = 12;
