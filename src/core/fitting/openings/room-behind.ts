import type { Opening } from '../../boat/opening.ts';
import { roomBehind } from '../../facts/opening-figures.ts';
import type { FitEntry } from '../../fits-shape.ts';
import type { FaceSheet, OpeningCase } from './opening-case.ts';

/** What a unit needs behind the panel against what is free; undefined where its sheet does not say how deep it is. */
export const roomBehindOf = (
  behind: Opening['behind'],
  { body, plugsMm }: FaceSheet,
  thickest: OpeningCase['thickest'],
): FitEntry['behind'] | undefined => {
  const bodyMm = body?.depthMm;
  if (bodyMm === undefined) return undefined;
  const bendMm = (thickest?.cableMm ?? 0) * roomBehind.bend.value;
  const behindBodyMm = Math.max(plugsMm ?? 0, bendMm);
  return {
    bodyMm,
    plugsMm: behindBodyMm,
    ...thickest,
    needMm: bodyMm + behindBodyMm,
    ...(behind?.depthMm === undefined ? {} : { freeMm: behind.depthMm }),
  };
};
