import type { CoaxPiece } from '../../aerial-shape.ts';
import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Cable } from '../../boat/boat-schema.ts';
import { lengthMm } from '../../boat/measure.ts';
import { dbPer100M, dbPer100MByName, lossByPoints } from '../../coax/coax-loss.ts';
import { cableSizes } from '../../facts/cable-sizes.ts';
import { coaxKindIds, coaxKinds } from '../../facts/coax.ts';
import type { LineEntry } from '../../plan-shape.ts';

type Known = Pick<CoaxPiece, 'kind' | 'by' | 'dbPer100M'>;

/** Cables of one thickness on the market differ by so much. */
const thicknessWithinMm = 1.2;

/** Nothing but the thickness is known: the worst of the kinds of it, or of the nearest. */
const byThickness = (diameterMm: number, mhz: number): Known => {
  const off = (id: (typeof coaxKindIds)[number]): number => Math.abs(coaxKinds[id].outsideMm - diameterMm);
  const leastOff = Math.min(...coaxKindIds.map(off));
  const like = coaxKindIds.filter((id) => off(id) <= Math.max(thicknessWithinMm, leastOff));
  return { by: 'thickness', dbPer100M: Math.max(...like.map((id) => dbPer100MByName(id, mhz))) };
};

/** What a coax that is aboard loses: by its own data sheet, else by its name, else by its thickness. */
const ofCable = ({ coax, diameterMm }: Cable, mhz: number): Known => {
  const kind = coax?.kind === undefined ? {} : { kind: coax.kind };
  const own =
    coax?.losses === undefined
      ? undefined
      : lossByPoints(
          [...coax.losses].sort((one, other) => one.mhz - other.mhz).map((at) => [at.mhz, at.dbPer100M] as const),
          mhz,
        );
  if (own !== undefined) return { ...kind, by: 'part', dbPer100M: own };
  if (coax?.kind !== undefined) return { ...kind, by: 'name', dbPer100M: dbPer100MByName(coax.kind, mhz) };
  return byThickness(diameterMm, mhz);
};

/** What a new coax loses: it is bought to the loss of its kind, which the shopping list names. */
const ofNew = (index: BoatIndex, { id, coax }: LineEntry, mhz: number): Known => {
  if (coax === undefined) return byThickness(cableSizes.coax.outsideMm.value, mhz);
  const isPinned = Object.hasOwn(index.boat.pins?.coax ?? {}, id);
  return { kind: coax, by: isPinned ? 'pin' : 'plan', dbPer100M: dbPer100M(coax, mhz) ?? dbPer100MByName(coax, mhz) };
};

/** The cables that a coax line is made of, each with what it loses at its longest. */
export const coaxPieces = (index: BoatIndex, line: LineEntry, mhz: number): CoaxPiece[] => {
  const piece = (known: Known, lengthM: number): Omit<CoaxPiece, 'cable'> => ({
    line: line.id,
    ...known,
    lengthM,
    lossDb: (known.dbPer100M * lengthM) / 100,
  });
  if (line.kept === undefined) return [piece(ofNew(index, line, mhz), line.longestM)];
  return line.kept.flatMap((id): CoaxPiece[] => {
    const cable = index.cables.get(id);
    if (cable === undefined) return [];
    return [{ ...piece(ofCable(cable, mhz), lengthMm(cable.length).longestMm / 1000), cable: id }];
  });
};
