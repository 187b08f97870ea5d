/**
 * An angle between -180 and 180 degrees, the shorter way round; half a turn is 180.
 *
 * @example signedAngleDeg(2 - 358) // 4
 */
export const signedAngleDeg = (angleDeg: number): number => {
  const turn = ((angleDeg % 360) + 360) % 360;
  return turn > 180 ? turn - 360 : turn;
};
