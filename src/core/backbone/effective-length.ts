/** A tee of the trunk: its distance from one end, and the drop that hangs on it. */
export interface TeeOnTrunk {
  readonly atMm: number;
  readonly dropMm: number;
}

/**
 * Effective length of a bus, mm: the farthest two points along the cable, L = max |x_i - x_j| + d_i + d_j, with x the
 * place of a tee on the trunk and d its drop; both ends of the trunk count as tees with no drop. Source: Real Time
 * Automation, DeviceNet cabling note; the form in pairs is computed.
 */
export const effectiveLength = ({
  trunkMm,
  tees,
}: {
  readonly trunkMm: number;
  readonly tees: readonly TeeOnTrunk[];
}): number => {
  const points = [{ atMm: 0, dropMm: 0 }, { atMm: trunkMm, dropMm: 0 }, ...tees];
  let farthestMm = 0;
  for (const [n, one] of points.entries()) {
    for (const other of points.slice(n + 1)) {
      farthestMm = Math.max(farthestMm, Math.abs(one.atMm - other.atMm) + one.dropMm + other.dropMm);
    }
  }
  return farthestMm;
};
