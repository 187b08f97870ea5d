import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Kit } from '../../boat/boat-schema.ts';
import type { Opening } from '../../boat/opening.ts';
import { isAboard, lastPhase } from '../../boat/phase.ts';
import type { Sheet } from '../../boat/sheet.ts';
import { hullOpenings } from '../../facts/openings.ts';
import type { FitEntry } from '../../fits-shape.ts';
import { airBehind, heatBehind } from './air-behind.ts';
import { fittingFigures } from './fitting-figures.ts';
import { mayCutBy } from './may-cut-by.ts';
import { type LinesBehind, roomBehindOf } from './room-behind.ts';
import { setOverHole } from './set-over-hole.ts';
import { shapeOf } from './shape-of.ts';
import { viewOf } from './view-of.ts';
import { waterAt } from './water-at.ts';

type Verdict = FitEntry['verdict'];

/** A housing comes into its old hole where the two differ by less than this. */
const sameHoleMm = 1;

const isHullKind = (kind: string): boolean => hullOpenings.kinds.some((one) => one === kind);

const inHull = ({ hole }: Opening, { cutout }: Sheet): Verdict => {
  if (cutout === undefined) return 'not-known';
  const more = Math.max(cutout.widthMm - hole.widthMm, cutout.heightMm - hole.heightMm);
  if (Math.abs(more) < sameHoleMm) return 'same-hole';
  return more > 0 ? 'enlarge' : 'elsewhere';
};

interface Comes {
  readonly unit: Kit;
  readonly sheet: Sheet;
}

/** The unit that is in an opening when all is done; undefined where none is. */
const inIt = (index: BoatIndex, opening: Opening): Comes | undefined => {
  const unit = index.kit.get(opening.for ?? '');
  const sheet = index.sheetOf.get(unit?.id ?? '');
  return unit !== undefined && sheet !== undefined && isAboard(unit, lastPhase(index.boat))
    ? { unit, sheet }
    : undefined;
};

const computedFor = (
  opening: Opening,
  { unit, sheet }: Comes,
  all: LinesBehind,
): Partial<FitEntry> & { readonly verdict: Verdict } => {
  if (opening.throughHull === true || isHullKind(sheet.kind)) {
    return { verdict: unit.fate === 'stays' ? 'as-it-is' : inHull(opening, sheet) };
  }
  const behind = roomBehindOf(opening.behind, { unit: unit.id, sheet, all });
  const room = behind === undefined ? {} : { behind };
  if (unit.fate === 'stays') return { verdict: 'as-it-is', ...room };
  const { body, cutout } = sheet;
  if (body === undefined || cutout === undefined) return { verdict: 'not-known', ...room };
  const onPlate = opening.plate !== undefined || opening.instead?.verdict === 'plate';
  const { kind, entry } = setOverHole({
    opening,
    sheet: { ...sheet, body, cutout },
    figures: fittingFigures(all.index.boat),
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
const cutReasons = (opening: Opening, comes: Comes | undefined, verdict: Verdict): FitEntry['notForCutting'] => {
  if (!['enlarge', 'plate', 'close'].includes(verdict)) return undefined;
  const reasons: NonNullable<FitEntry['notForCutting']> = [
    ...(comes !== undefined && verdict !== 'close' && !mayCutBy(comes.unit, comes.sheet)
      ? ['typical-sizes' as const]
      : []),
    ...(opening.how === 'guessed' ? ['guessed-hole' as const] : []),
  ];
  return reasons.length === 0 ? undefined : reasons;
};

/** One opening against what is to come there, apart from its neighbours. */
export const fitOf = (opening: Opening, all: LinesBehind): FitEntry => {
  const { index } = all;
  const comes = inIt(index, opening);
  const computed = comes === undefined ? { verdict: 'close' as const } : computedFor(opening, comes, all);
  const verdict = opening.instead?.verdict ?? computed.verdict;
  const exposure = index.places.get(opening.place)?.exposure ?? 'dry';
  const water = comes === undefined || opening.throughHull === true ? undefined : waterAt(exposure, comes.sheet);
  const heat = comes === undefined ? undefined : heatBehind(opening.behind, comes.sheet);
  const view = comes === undefined ? undefined : viewOf(opening.viewed, comes.sheet);
  const notForCutting = cutReasons(opening, comes, verdict);
  return {
    opening: opening.id,
    place: opening.place,
    hole: shapeOf(opening.hole),
    ...(comes === undefined ? {} : { unit: comes.unit.id }),
    ...computed,
    verdict,
    ...(verdict === computed.verdict ? {} : { computed: computed.verdict }),
    ...(opening.instead === undefined ? {} : { reason: opening.instead.reason }),
    ...(heat === undefined ? {} : { heat }),
    ...(view === undefined ? {} : { view }),
    ...(water === undefined ? {} : { water }),
    ...(notForCutting === undefined ? {} : { notForCutting }),
  };
};
