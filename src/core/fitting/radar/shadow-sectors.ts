import { scannerFigures } from '../../facts/antenna-figures.ts';

const deg = (angle: number): number => (angle * 180) / Math.PI;

/** An arc, clockwise from ahead; `toDeg` is less than `fromDeg` where it lies over the bow. */
export interface Sector {
  readonly fromDeg: number;
  readonly toDeg: number;
}

/** The angle that something of a width covers at a distance; what stands in the array itself covers half of all. */
export const opticalDeg = (acrossM: number, distanceM: number): number =>
  distanceM <= acrossM / 2 ? 180 : 2 * deg(Math.asin(acrossM / (2 * distanceM)));

/** The least distance at which something of a width covers no more than an angle, m. */
export const leastDistanceM = (acrossM: number, angleDeg: number): number =>
  acrossM / 2 / Math.sin((angleDeg / 2) * (Math.PI / 180));

const widthOf = ({ fromDeg, toDeg }: Sector): number => (toDeg - fromDeg + 360) % 360;

/** What the guideline for ships says of all shadows of a scanner. */
export interface SectorVerdict {
  readonly sectors: readonly Sector[];
  readonly largestDeg: number;
  readonly totalDeg: number;
  /** one reaches into what must be clear: ahead to 22.5 degrees abaft the beam on either side */
  readonly isAhead: boolean;
  readonly guidelineMet: boolean;
}

/** Sectors that lie apart by no more than 3 degrees are one, the gap included; exactly 3 counts as one too. */
export const mergeSectors = (sectors: readonly Sector[]): Sector[] => {
  const sorted = [...sectors].sort((one, other) => one.fromDeg - other.fromDeg || one.toDeg - other.toDeg);
  const spans = sorted.map((sector) => ({ from: sector.fromDeg, to: sector.fromDeg + widthOf(sector) }));
  const merged: { from: number; to: number }[] = [];
  for (const { from, to } of spans) {
    const last = merged.at(-1);
    if (last !== undefined && from - last.to <= scannerFigures.sectorsApart.value) last.to = Math.max(last.to, to);
    else merged.push({ from, to });
  }
  const [first, last] = [merged[0], merged.at(-1)];
  // one that lies over the bow meets the first from behind
  if (
    first !== undefined &&
    last !== undefined &&
    first !== last &&
    first.from + 360 - last.to <= scannerFigures.sectorsApart.value
  ) {
    last.to = Math.max(last.to, first.to + 360);
    merged.shift();
  }
  return merged.map(({ from, to }) => ({ fromDeg: from, toDeg: to > 360 ? to - 360 : to }));
};

const reachesAhead = ({ fromDeg, toDeg }: Sector): boolean => {
  const clearDeg = scannerFigures.abaftBeam.value;
  return toDeg < fromDeg || fromDeg < clearDeg || toDeg > 360 - clearDeg;
};

export const sectorVerdict = (shadows: readonly Sector[]): SectorVerdict => {
  const sectors = mergeSectors(shadows);
  const widths = sectors.map(widthOf);
  const largestDeg = Math.max(0, ...widths);
  const totalDeg = widths.reduce((sum, width) => sum + width, 0);
  const isAhead = sectors.some(reachesAhead);
  const guidelineMet =
    !isAhead && largestDeg <= scannerFigures.oneSector.value && totalDeg <= scannerFigures.allSectors.value;
  return { sectors, largestDeg, totalDeg, isAhead, guidelineMet };
};
