import type { BoatIndex } from '../boat/boat-index.ts';
import type { BusEntry, LineEntry } from '../plan-shape.ts';
import { drawnCable } from './way-fills.ts';

/**
 * Outside diameter of the cable of a line, mm: that of the thickest cable aboard it is made of, else that of its grade on a
 * bus, else the usual one of its kind.
 */
export const cableOutsideMm = (
  index: BoatIndex,
  line: LineEntry,
  buses: readonly Pick<BusEntry, 'id' | 'grade'>[],
): number => {
  const aboard = index.boat.cables.filter(({ id }) => line.kept?.includes(id) === true);
  if (aboard.length > 0) return Math.max(...aboard.map(({ diameterMm }) => diameterMm));
  return drawnCable(line, buses).outsideMm;
};
