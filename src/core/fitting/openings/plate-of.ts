import { byCodeUnit } from '../../boat/ids.ts';
import type { Opening, PlateWish } from '../../boat/opening.ts';
import { plateCorner, plateMaterialFigures, plateScrews } from '../../facts/opening-figures.ts';
import type { FitEntry, MmShape, PlateEntry } from '../../fits-shape.ts';
import type { FittingFigures } from './fitting-figures.ts';
import { plateBounds } from './plate-bounds.ts';
import { plateScrewsAt } from './plate-screws-at.ts';
import type { Point } from './point.ts';
import { screwNeedMm } from './screw-needs.ts';
import { shapeAt } from './shape-at.ts';
import { shapePoints } from './shape-points.ts';
import { sticksOutMm, touchingMm } from './sticks-out.ts';

type PanelMaterial = Opening['panel']['material'];

/** A plate of what the panel is made of, where plates are made of that. */
const materialOn: Readonly<Record<PanelMaterial, PlateEntry['material']>> = {
  grp: 'grp',
  aluminium: 'aluminium',
  // aluminium on steel wants parting, laminate does not
  steel: 'grp',
  plywood: 'plywood',
  wood: 'plywood',
  acrylic: 'acrylic',
  polycarbonate: 'polycarbonate',
  hdpe: 'hdpe',
};

/** One opening under a plate. */
export interface UnderPlate {
  readonly opening: Opening;
  readonly fit: FitEntry;
}

const isSetIn = ({ verdict }: FitEntry): boolean => verdict === 'plate';

/** Where the middle of each hole lies from that of the first. */
const middles = (under: readonly UnderPlate[]): Point[] => {
  const [firstX, firstY] = under[0]?.opening.atMm ?? [0, 0];
  return under.map(({ opening }): Point => {
    const [x, y] = opening.atMm ?? [firstX, firstY];
    return [x - firstX, y - firstY];
  });
};

const shapesUnder = (
  under: readonly UnderPlate[],
  at: readonly Point[],
  pick: (fit: FitEntry) => MmShape | undefined,
) =>
  under.flatMap(({ fit }, n) => {
    const shape = pick(fit);
    return shape === undefined ? [] : [shapeAt(shape, at[n] ?? [0, 0])];
  });

/** The least overlap at which the screws of a plate keep off the edge of the old hole. */
const leastOverlapMm = ({ screwDiameters }: FittingFigures): number =>
  plateScrews.fromEdge.value + screwNeedMm(plateScrews.holeMm.value, screwDiameters);

const joinedReasons = (under: readonly UnderPlate[]): PlateEntry['notForCutting'] => {
  const reasons = [...new Set(under.flatMap(({ fit }) => fit.notForCutting ?? []))].sort(byCodeUnit);
  return reasons.length === 0 ? undefined : reasons;
};

/** Whether what is cut for a unit reaches out of the old hole. */
const isWider = ({ hole, cut }: FitEntry): boolean =>
  cut !== undefined && sticksOutMm(shapePoints(cut), hole) > touchingMm;

/** One plate over its openings: as large as its holes with their overlap and its bezels with its own screws ask for. */
export const plateOf = (id: string, under: readonly UnderPlate[], figures: FittingFigures): PlateEntry | undefined => {
  const [first] = under;
  if (first === undefined) return undefined;
  const wish: Partial<PlateWish> = first.opening.plate ?? {};
  const at = middles(under);
  const overlapMm = Math.max(wish.overlapMm ?? figures.overlapMm, leastOverlapMm(figures));
  const outline = plateBounds({
    holes: [
      ...shapesUnder(under, at, ({ hole }) => hole),
      ...shapesUnder(under, at, (fit) => (isSetIn(fit) ? fit.cut : undefined)),
    ],
    overlapMm,
    bezels: shapesUnder(under, at, (fit) => (isSetIn(fit) ? fit.bezel : undefined)),
    roundBezelMm: plateScrews.fromEdge.value + plateScrews.holeMm.value,
  });
  const own: Point[] = at.map(([x, y]) => [x - outline.xMm, y - outline.yMm]);
  const material = wish.material ?? materialOn[first.opening.panel.material];
  const { leastMm, mostMm, takenMm } = plateMaterialFigures.materials[material];
  const notForCutting = joinedReasons(under);
  return {
    id,
    place: first.opening.place,
    openings: under.map(({ opening, fit }, n) => ({
      opening: opening.id,
      xMm: own[n]?.[0] ?? 0,
      yMm: own[n]?.[1] ?? 0,
      ...(isSetIn(fit) && fit.unit !== undefined ? { unit: fit.unit } : {}),
    })),
    outline: { ...outline, xMm: 0, yMm: 0, cornerMm: plateCorner.value },
    cuts: under.flatMap(({ fit: { unit, cut, verdict } }, n) =>
      unit === undefined || cut === undefined || verdict !== 'plate'
        ? []
        : [{ unit, cut: shapeAt(cut, own[n] ?? [0, 0]) }],
    ),
    screws: [
      ...plateScrewsAt(outline),
      ...under.flatMap(({ fit: { unit, screws = [], verdict } }, n) =>
        unit === undefined || verdict !== 'plate'
          ? []
          : screws.map(({ xMm, yMm, holeMm }) => ({
              xMm: xMm + (own[n]?.[0] ?? 0),
              yMm: yMm + (own[n]?.[1] ?? 0),
              holeMm,
              of: unit,
            })),
      ),
    ],
    widens: under.flatMap(({ opening, fit }) => (isSetIn(fit) && isWider(fit) ? [opening.id] : [])),
    overlapMm,
    material,
    thicknessMm: wish.thicknessMm ?? takenMm,
    usualMm: [leastMm, mostMm],
    ...(notForCutting === undefined ? {} : { notForCutting }),
  };
};
