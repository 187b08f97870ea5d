import { nearZoneM } from './near-zone.ts';

const rad = (deg: number): number => (deg * Math.PI) / 180;
const deg = (angle: number): number => (angle * 180) / Math.PI;

/** A beam on a heeled boat. */
export interface HeeledBeam {
  /** where the sea is first lit abeam to windward */
  readonly weatherM: number;
  /** how far the upper edge stands over the horizon abeam to leeward; below nothing it looks into the sea there */
  readonly leeUpDeg: number;
  /**
   * bearings, on either side, between which the horizon is out of the beam, which a heel tilts by atan(tan heel * sin bearing);
   * absent where it never is
   */
  readonly lost?: { readonly fromDeg: number; readonly toDeg: number };
}

export const heeledBeam = ({
  heightM,
  beamDeg,
  heelDeg,
}: {
  readonly heightM: number;
  readonly beamDeg: number;
  readonly heelDeg: number;
}): HeeledBeam => {
  const weatherM = nearZoneM({ heightM, beamDeg, tiltDeg: -heelDeg });
  const leeUpDeg = beamDeg / 2 - heelDeg;
  const sine = Math.tan(rad(beamDeg / 2)) / Math.tan(rad(heelDeg));
  if (heelDeg <= 0 || sine >= 1) return { weatherM, leeUpDeg };
  const fromDeg = deg(Math.asin(sine));
  return { weatherM, leeUpDeg, lost: { fromDeg, toDeg: 180 - fromDeg } };
};
