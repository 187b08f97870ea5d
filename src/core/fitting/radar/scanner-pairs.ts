import type { BoatIndex } from '../../boat/boat-index.ts';
import { scannerFigures } from '../../facts/antenna-figures.ts';
import type { ScannerPair } from '../../radar-shape.ts';
import type { SiteEntry } from '../../sites-shape.ts';

/** Every two scanners: books ask for half a metre in height or two metres across; the maker’s word comes first. */
export const scannerPairs = (index: BoatIndex, sites: readonly SiteEntry[]): ScannerPair[] => {
  const radars = sites.filter(({ is }) => is === 'radar');
  return radars.flatMap((one, at) =>
    radars.slice(at + 1).flatMap((other): ScannerPair[] => {
      const [here, there] = [index.places.get(one.place), index.places.get(other.place)];
      if (here === undefined || there === undefined) return [];
      const acrossM = Math.hypot(here.xM - there.xM, here.yM - there.yM);
      const upM = Math.abs(here.zM - there.zM);
      const isNear = upM < scannerFigures.twoUp.value && acrossM < scannerFigures.twoAcross.value;
      return [{ one: one.unit, other: other.unit, acrossM, upM, verdict: isNear ? 'advice' : 'ok' }];
    }),
  );
};
