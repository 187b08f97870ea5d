import type { BoatIndex } from '../boat/boat-index.ts';
import type { Kit } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { keptFor } from '../boat/kept-for.ts';
import { isAboard, lastPhase } from '../boat/phase.ts';
import type { Sheet } from '../boat/sheet.ts';
import { takenFor } from '../facts/antenna-figures.ts';
import type { Upright } from './upright.ts';

/** A unit in the open when the work is done. */
export interface OutsideUnit extends Upright {
  readonly unit: Kit;
  readonly sheet: Sheet;
  /** across it; absent where nobody knows */
  readonly wideM?: number;
}

const widthOf = ({ kind, scanner, antenna, body }: Sheet): number | undefined => {
  if (scanner?.acrossM !== undefined) return scanner.acrossM;
  if (kind === 'radar') return takenFor.scannerM.value;
  if (body !== undefined) return body.widthMm / 1000;
  return kind === 'radio-antenna' || antenna?.lengthM !== undefined ? takenFor.whipM.value : undefined;
};

/** Every unit that stands in weather or spray when the work is done, by id, as upright as it is. */
export const outsideUnits = keptFor(({ boat, sheetOf, places }: BoatIndex): readonly OutsideUnit[] => {
  const last = lastPhase(boat);
  return boat.kit
    .flatMap((unit): OutsideUnit[] => {
      const [sheet, place] = [sheetOf.get(unit.id), places.get(unit.place)];
      if (sheet === undefined || place === undefined || !isAboard(unit, last)) return [];
      if (place.exposure !== 'weather' && place.exposure !== 'spray') return [];
      const tallM = sheet.antenna?.lengthM ?? 0;
      const wideM = widthOf(sheet);
      const { xM, yM, zM } = place;
      return [{ unit, sheet, xM, yM, fromM: zM, toM: zM + tallM, ...(wideM === undefined ? {} : { wideM }) }];
    })
    .sort((one, other) => byCodeUnit(one.unit.id, other.unit.id));
});
