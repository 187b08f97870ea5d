import type { BoatIndex } from '../../boat/boat-index.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import { isAboard, lastPhase } from '../../boat/phase.ts';
import { shipPaperIds, shipPapers } from '../../facts/ship-papers.ts';
import type { ShipPaperEntry } from '../../settings-sheet-shape.ts';
import { addDays } from '../../units/add-days.ts';
import { ownSetOf } from './own-sets.ts';

/** The papers her radios and beacons ask for, and where each stands. Whether inland waters ask for identification is asked, not assumed. */
export const paperEntries = ({ boat, sheetOf }: BoatIndex): ShipPaperEntry[] => {
  const last = lastPhase(boat);
  return shipPaperIds.flatMap((paper): ShipPaperEntry[] => {
    const { kinds, wait } = shipPapers[paper];
    const units = boat.kit
      .filter((unit) => {
        const sheet = sheetOf.get(unit.id);
        const isAsking = paper === 'beacon-registration' || ownSetOf(sheet) !== undefined;
        return isAboard(unit, last) && isAsking && kinds.includes(sheet?.kind ?? '');
      })
      .map(({ id }) => id)
      .sort(byCodeUnit);
    const stands = boat.papers?.paperwork?.find((entry) => entry.paper === paper);
    if (units.length === 0 && stands === undefined) return [];
    const days = stands?.waitDays ?? wait.value;
    return [
      {
        paper,
        for: units,
        state: stands?.state ?? (paper === 'inland-identification' ? 'to-ask' : 'to-start'),
        ...(stands?.on === undefined ? {} : { on: stands.on }),
        waitDays: days,
        waitFrom: stands?.waitDays === undefined ? 'memory' : 'office',
        ...(stands?.state === 'asked' && stands.on !== undefined ? { thereOn: addDays(stands.on, days) } : {}),
      },
    ];
  });
};
