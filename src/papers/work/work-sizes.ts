/** Sizes of the picture of the work, millimetres. */
export const workSizes = {
  /** room for the names at the left */
  gutterMm: 27,
  nameMm: 3.1,
  smallMm: 2.92,
  /** heads: phase and day, then the line of the water */
  headMm: 12,
  balloonMm: 2.15,
  tierMm: 4.9,
  /** from the rope down to the words under it, and on to the next hand */
  underMm: 4.4,
  handGapMm: 4,
  laneMm: 4.7,
} as const;
