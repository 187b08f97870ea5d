import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Opening } from '../../boat/opening.ts';
import type { Sheet } from '../../boat/sheet.ts';
import { roomBehind } from '../../facts/opening-figures.ts';
import type { FitEntry } from '../../fits-shape.ts';
import type { BusEntry, LineEntry } from '../../plan-shape.ts';
import { cableOutsideMm } from '../../ways/cable-outside.ts';

/** Lines of the boat with what tells how thick they are. */
export interface LinesBehind {
  readonly index: BoatIndex;
  readonly lines: readonly LineEntry[];
  readonly buses: readonly Pick<BusEntry, 'id' | 'grade'>[];
}

const thickestAt = (
  { index, lines, buses }: LinesBehind,
  unit: string,
): { line: string; cableMm: number } | undefined =>
  lines
    .filter(({ from, to }) => [from, to].some((end) => end.startsWith(`${unit}.`)))
    .map((line) => ({ line: line.id, cableMm: cableOutsideMm(index, line, buses) }))
    .reduce<{ line: string; cableMm: number } | undefined>(
      (most, one) => (most === undefined || one.cableMm > most.cableMm ? one : most),
      undefined,
    );

/** What a unit needs behind the panel against what is free; undefined where its sheet does not say how deep it is. */
export const roomBehindOf = (
  behind: Opening['behind'],
  { unit, sheet, all }: { readonly unit: string; readonly sheet: Sheet; readonly all: LinesBehind },
): FitEntry['behind'] | undefined => {
  const bodyMm = sheet.body?.depthMm;
  if (bodyMm === undefined) return undefined;
  const thickest = thickestAt(all, unit);
  const bendMm = (thickest?.cableMm ?? 0) * roomBehind.bend.value;
  const plugsMm = Math.max(sheet.plugsMm ?? 0, bendMm);
  return {
    bodyMm,
    plugsMm,
    ...thickest,
    needMm: bodyMm + plugsMm,
    ...(behind?.depthMm === undefined ? {} : { freeMm: behind.depthMm }),
  };
};
