const mileM = 1852;

/** A bearing brought into 0 to 360. */
export const wholeTurn = (deg: number): number => ((deg % 360) + 360) % 360;

/** The bearing of something from ahead, by its bearing and the heading. */
export const relativeDeg = (bearingDeg: number, headingDeg: number): number => wholeTurn(bearingDeg - headingDeg);

/** How far beside the truth something is drawn at a range, where the heading line is out by an angle. */
export const besideM = (errorDeg: number, rangeNm: number): number =>
  rangeNm * mileM * Math.tan((errorDeg * Math.PI) / 180);

/** The bearing of one spot from another aboard, clockwise from ahead. */
export const bearingOn = (
  from: { readonly xM: number; readonly yM: number },
  to: { readonly xM: number; readonly yM: number },
): number => relativeDeg((Math.atan2(to.yM - from.yM, to.xM - from.xM) * 180) / Math.PI, 0);
