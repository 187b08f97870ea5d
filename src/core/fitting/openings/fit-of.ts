import type { Opening } from '../../boat/opening.ts';
import { hullOpenings } from '../../facts/openings.ts';
import type { FitEntry } from '../../fits-shape.ts';
import { airBehind, heatBehind } from './air-behind.ts';
import type { FittingFigures } from './fitting-figures.ts';
import type { FaceSheet, OpeningCase } from './opening-case.ts';
import { roomBehindOf } from './room-behind.ts';
import { setOverHole } from './set-over-hole.ts';
import { shapeOf } from './shape-of.ts';
import { viewOf } from './view-of.ts';
import { waterAt } from './water-at.ts';

type Verdict = FitEntry['verdict'];

/** A housing comes into its old hole where the two differ by less than this. */
const sameHoleMm = 1;

const isHullKind = (kind: string): boolean => hullOpenings.kinds.some((one) => one === kind);

const inHull = ({ hole }: Opening, { cutout }: FaceSheet): Verdict => {
  if (cutout === undefined) return 'not-known';
  const more = Math.max(cutout.widthMm - hole.widthMm, cutout.heightMm - hole.heightMm);
  if (Math.abs(more) < sameHoleMm) return 'same-hole';
  return more > 0 ? 'enlarge' : 'elsewhere';
};

const computedFor = (
  { opening, unit, thickest }: OpeningCase,
  sheet: FaceSheet,
  figures: FittingFigures,
): Partial<FitEntry> & { readonly verdict: Verdict } => {
  if (opening.throughHull === true || isHullKind(sheet.kind)) {
    return { verdict: unit?.fate === 'stays' ? 'as-it-is' : inHull(opening, sheet) };
  }
  const behind = roomBehindOf(opening.behind, sheet, thickest);
  const room = behind === undefined ? {} : { behind };
  if (unit?.fate === 'stays') return { verdict: 'as-it-is', ...room };
  const { body, cutout } = sheet;
  if (body === undefined || cutout === undefined) return { verdict: 'not-known', ...room };
  const onPlate = opening.plate !== undefined || opening.instead?.verdict === 'plate';
  const { kind, entry } = setOverHole({
    opening,
    sheet: { ...sheet, body, cutout },
    figures,
    onPlate,
    noPlate: opening.instead !== undefined && opening.instead.verdict !== 'plate',
    ...(behind === undefined ? {} : { backMm: behind.needMm }),
  });
  const tooShallow = behind?.freeMm !== undefined && behind.freeMm < behind.needMm;
  const air = entry.cut === undefined ? undefined : airBehind(opening.behind, entry.cut);
  return {
    verdict: tooShallow || entry.case === 'no-room' ? 'elsewhere' : kind,
    ...entry,
    ...room,
    ...(air === undefined ? {} : { air }),
  };
};

/** What is cut by hand needs sizes that were read, and a hole that was measured. */
const cutReasons = ({ opening, unit, mayCut }: OpeningCase, verdict: Verdict): FitEntry['notForCutting'] => {
  if (!['enlarge', 'plate', 'close'].includes(verdict)) return undefined;
  const reasons: NonNullable<FitEntry['notForCutting']> = [
    ...(unit !== undefined && verdict !== 'close' && mayCut !== true ? ['typical-sizes' as const] : []),
    ...(opening.how === 'guessed' ? ['guessed-hole' as const] : []),
  ];
  return reasons.length === 0 ? undefined : reasons;
};

/** What its place and those who look at it ask of a face. */
const facing = ({ opening, exposure }: OpeningCase, sheet: FaceSheet): Partial<FitEntry> => {
  const water = opening.throughHull === true ? undefined : waterAt(exposure, sheet, 'in-panel');
  const heat = heatBehind(opening.behind, sheet);
  const view = viewOf(opening.viewed, sheet);
  return {
    ...(heat === undefined ? {} : { heat }),
    ...(view === undefined ? {} : { view }),
    ...(water === undefined ? {} : { water }),
  };
};

/** One opening against what is to come there, apart from its neighbours. */
export const fitOf = (one: OpeningCase, figures: FittingFigures): FitEntry => {
  const { opening, unit, sheet } = one;
  const computed = sheet === undefined ? { verdict: 'close' as const } : computedFor(one, sheet, figures);
  const verdict = opening.instead?.verdict ?? computed.verdict;
  const notForCutting = cutReasons(one, verdict);
  return {
    opening: opening.id,
    place: opening.place,
    hole: shapeOf(opening.hole),
    ...(unit === undefined ? {} : { unit: unit.id }),
    ...computed,
    verdict,
    ...(verdict === computed.verdict ? {} : { computed: computed.verdict }),
    ...(opening.instead === undefined ? {} : { reason: opening.instead.reason }),
    ...(sheet === undefined ? {} : facing(one, sheet)),
    ...(notForCutting === undefined ? {} : { notForCutting }),
  };
};
