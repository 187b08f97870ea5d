import { areaD, FillRule, unionD } from 'clipper2-ts';
import type { Opening } from '../../boat/opening.ts';
import type { FitEntry, MmShape, PlateEntry } from '../../fits-shape.ts';
import { overlapMm } from './best-place.ts';
import { edgeDistanceMm } from './edge-distance.ts';
import type { FittingFigures } from './fitting-figures.ts';
import { leastWebMm } from './least-web.ts';
import type { Point } from './point.ts';
import { shapeAt } from './shape-at.ts';
import { shapePoints } from './shape-points.ts';
import { sticksOutMm, touchingMm } from './sticks-out.ts';

/** An opening with what became of it. */
export interface Fitted {
  readonly opening: Opening;
  readonly fit: FitEntry;
  /** the plate over it */
  readonly plate?: PlateEntry;
}

const between = (one: MmShape, other: MmShape): number => {
  const [a, b] = [shapePoints(one), shapePoints(other)];
  const toOther = a.map((point) => edgeDistanceMm(other, point));
  return Math.min(...toOther, ...b.map((point) => edgeDistanceMm(one, point)));
};

const cutHere = ({ verdict, cut }: FitEntry): MmShape | undefined =>
  ['as-it-is', 'enlarge', 'plate'].includes(verdict) ? cut : undefined;

/** Holes in the panel when all is done, from the mark of the place. */
const holesOf = ({ fit }: Fitted, at: Point): MmShape[] =>
  [fit.hole, cutHere(fit)].flatMap((shape) => (shape === undefined ? [] : [shapeAt(shape, at)]));

/** Whether anything new is cut out of the panel for it. */
const takesPanel = ({ fit }: Fitted): boolean => {
  const cut = cutHere(fit);
  return cut !== undefined && sticksOutMm(shapePoints(cut), fit.hole) > touchingMm;
};

const thicknessOf = ({ panel }: Opening): number => panel.thicknessMm + (panel.core?.thicknessMm ?? 0);

/** Cut-outs side by side in one plate, from the mark of the place. */
const onOnePlate = (one: Fitted, other: Fitted): boolean => one.plate !== undefined && one.plate.id === other.plate?.id;

const webBetween = (one: Fitted, other: Fitted, figures: FittingFigures): NonNullable<FitEntry['webs']> => {
  const [at, otherAt] = [one.opening.atMm, other.opening.atMm];
  if (at === undefined || otherAt === undefined) return [];
  const inPlate = onOnePlate(one, other);
  const [cut, otherCut] = [cutHere(one.fit), cutHere(other.fit)];
  if (inPlate && (cut === undefined || otherCut === undefined)) return [];
  if (!inPlate && !takesPanel(one) && !takesPanel(other)) return [];
  const own = inPlate && cut !== undefined ? [shapeAt(cut, at)] : holesOf(one, at);
  const others = inPlate && otherCut !== undefined ? [shapeAt(otherCut, otherAt)] : holesOf(other, otherAt);
  const needMm = leastWebMm({
    thicknessMm: inPlate ? (one.plate?.thicknessMm ?? 0) : thicknessOf(one.opening),
    leastMm: figures.webLeastMm,
    thicknesses: figures.webThicknesses,
  });
  return [
    {
      to: other.opening.id,
      leftMm: Math.min(...own.flatMap((a) => others.map((b) => between(a, b)))),
      needMm,
    },
  ];
};

/** What is left of the panel between an opening and the others at its place, where something is cut there. */
export const websOf = (one: Fitted, all: readonly Fitted[], figures: FittingFigures): FitEntry['webs'] | undefined => {
  const webs = all
    .filter(({ opening }) => opening.place === one.opening.place && opening.id !== one.opening.id)
    .flatMap((other) => webBetween(one, other, figures));
  return webs.length === 0 ? undefined : webs;
};

/** What covers an opening when all is done, from the mark of the place: its plate, or its bezel. */
const coverOf = ({ opening, fit, plate }: Fitted): MmShape | undefined => {
  const [x, y] = opening.atMm ?? [];
  if (x === undefined || y === undefined) return undefined;
  const hole = plate?.openings.find((one) => one.opening === opening.id);
  if (plate !== undefined && hole !== undefined) return shapeAt(plate.outline, [x - hole.xMm, y - hole.yMm]);
  return fit.bezel === undefined || cutHere(fit) === undefined ? undefined : shapeAt(fit.bezel, [x, y]);
};

/** What the cover of one opening lies over of another’s at the place, apart from one plate over both. */
export const crowdsOf = (one: Fitted, all: readonly Fitted[]): FitEntry['crowds'] | undefined => {
  const cover = coverOf(one);
  if (cover === undefined) return undefined;
  const crowds = all
    .filter(({ opening }) => opening.place === one.opening.place && opening.id !== one.opening.id)
    .flatMap((other) => {
      const otherCover = onOnePlate(one, other) ? undefined : coverOf(other);
      const byMm = otherCover === undefined ? 0 : overlapMm(cover, otherCover);
      return byMm > touchingMm ? [{ with: other.opening.id, byMm }] : [];
    });
  return crowds.length === 0 ? undefined : crowds;
};

/** How much of a panel is cut away by all openings in it, in per cent; undefined where its edges are not all known. */
export const cutAwayOf = (one: Fitted, all: readonly Fitted[]): number | undefined => {
  const { left, right, above, below } = one.opening.panel.edgesMm ?? {};
  if (left === undefined || right === undefined || above === undefined || below === undefined) return undefined;
  const { widthMm, heightMm } = one.fit.hole;
  const at = one.opening.atMm;
  const others = all.filter(({ opening }) => opening.place === one.opening.place && opening.id !== one.opening.id);
  const shapes = [
    ...holesOf(one, at ?? [0, 0]),
    ...others.flatMap((other) =>
      at === undefined || other.opening.atMm === undefined ? [] : holesOf(other, other.opening.atMm),
    ),
  ];
  const paths = shapes.map((shape) => shapePoints(shape).map(([x, y]) => ({ x, y })));
  const cutMm2 = unionD(paths, [], FillRule.NonZero, 4).reduce((sum, path) => sum + areaD(path), 0);
  return (100 * cutMm2) / ((widthMm + left + right) * (heightMm + above + below));
};
