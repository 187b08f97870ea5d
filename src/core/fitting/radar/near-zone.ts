const rad = (deg: number): number => (deg * Math.PI) / 180;

/** Where the lower edge of a beam first meets the sea, m; `tiltDeg` downward. Without end where it does not look down at all. */
export const nearZoneM = ({
  heightM,
  beamDeg,
  tiltDeg = 0,
}: {
  readonly heightM: number;
  readonly beamDeg: number;
  readonly tiltDeg?: number;
}): number => {
  const downDeg = beamDeg / 2 + tiltDeg;
  return downDeg <= 0 ? Number.POSITIVE_INFINITY : heightM / Math.tan(rad(downDeg));
};

/** From where a set sees at all: its near zone, or its own least range where that is farther. */
export const blindM = (nearM: number, leastRangeM = 0): number => Math.max(nearM, leastRangeM);

/** Height of the lower and the upper edge of a level beam at some distance, m over the water. */
export const beamAt = ({
  heightM,
  beamDeg,
  distanceM,
}: {
  readonly heightM: number;
  readonly beamDeg: number;
  readonly distanceM: number;
}): { readonly fromM: number; readonly toM: number } => {
  const halfM = distanceM * Math.tan(rad(beamDeg / 2));
  return { fromM: heightM - halfM, toM: heightM + halfM };
};
