import type { Opening } from '../../boat/opening.ts';
import { remember } from '../../boat/remember.ts';
import type { FitEntry } from '../../fits-shape.ts';
import { sides } from '../../fits-shape.ts';
import { bestPlace, marginLeft, overlapMm, type PlaceOver, type SetOver } from './best-place.ts';
import { edgeDistanceMm } from './edge-distance.ts';
import type { FittingFigures } from './fitting-figures.ts';
import { grownShape } from './grown-shape.ts';
import type { FaceSheet } from './opening-case.ts';
import type { Point } from './point.ts';
import { screwNeedMm } from './screw-needs.ts';
import { shapeAt } from './shape-at.ts';
import { shapeOf } from './shape-of.ts';
import { touchingMm } from './sticks-out.ts';
import { uncoveredOf } from './uncovered.ts';

/** Latest places that were sought; a boat has some ten openings. */
const found = remember({ most: 64, keyOf: (over: SetOver) => JSON.stringify(over), find: bestPlace });

interface Setting {
  readonly opening: Opening;
  readonly sheet: FaceSheet & Required<Pick<FaceSheet, 'body' | 'cutout'>>;
  readonly figures: FittingFigures;
  /** how far back its body and plugs reach; absent where that is not known */
  readonly backMm?: number;
  readonly onPlate: boolean;
  /** a person has decided that no plate comes, whatever is computed */
  readonly noPlate?: boolean;
}

type Obstacle = NonNullable<NonNullable<Opening['behind']>['obstacles']>[number];

const obstacleShape = ({ xMm, yMm, widthMm, heightMm }: Obstacle) =>
  ({ shape: 'rectangle', xMm, yMm, widthMm, heightMm }) as const;

const overOf = ({ opening, sheet, figures, backMm = Number.POSITIVE_INFINITY, onPlate }: Setting) => {
  const near = (opening.behind?.obstacles ?? []).filter(({ fromMm = 0 }) => fromMm < backMm);
  const over: SetOver = {
    hole: shapeOf(opening.hole),
    cut: shapeOf(sheet.cutout),
    bezel: shapeOf(sheet.body),
    landMm: figures.landMm,
    screws: (sheet.cutout.screws ?? []).map(({ xMm, yMm, holeMm }) => ({
      at: [xMm, yMm],
      needMm: screwNeedMm(holeMm, figures.screwDiameters),
    })),
    edgesMm: opening.panel.edgesMm ?? {},
    edgeLeastMm: figures.edgeLeastMm,
    inTheWay: near.map(obstacleShape),
    ...(onPlate ? { onPlate } : {}),
  };
  return { over, near };
};

const oldScrewsOf = ({ opening }: Setting, covered: (at: Point) => boolean): FitEntry['oldScrews'] | undefined =>
  opening.screws === undefined
    ? undefined
    : {
        count: opening.screws.length,
        bare: opening.screws.filter(({ xMm, yMm }) => !covered([xMm, yMm])).length,
      };

/** A unit set over a hole where it is best: what is cut and covered, and what lacks. */
export interface SetFit extends Pick<PlaceOver, 'kind'> {
  readonly entry: Pick<
    FitEntry,
    'case' | 'cut' | 'bezel' | 'setOffMm' | 'uncovered' | 'screws' | 'oldScrews' | 'margins' | 'obstacles'
  >;
}

/** Sets a unit over a hole where it is best, and says what is cut, what stays bare and what lacks. */
export const setOverHole = (setting: Setting): SetFit => {
  const { sheet, figures, onPlate, noPlate = false } = setting;
  const { over, near } = overOf(setting);
  const { setOff, kind, case: which } = found(over);
  const [cut, bezel] = [shapeAt(over.cut, setOff), shapeAt(over.bezel, setOff)];
  const uncovered = uncoveredOf(over.hole, grownShape(bezel, -figures.landMm));
  const margins = sides.flatMap((side) => {
    const leftMm = marginLeft(over, cut, side);
    return leftMm === undefined ? [] : [{ side, leftMm, needMm: figures.edgeLeastMm }];
  });
  const obstacles = near.flatMap((one) => {
    const byMm = overlapMm(obstacleShape(one), cut);
    return byMm > touchingMm ? [{ what: one.what, byMm, fromMm: one.fromMm ?? 0 }] : [];
  });
  const screws = sheet.cutout.screws?.map(({ xMm, yMm, holeMm }) => {
    const at: Point = [xMm + setOff[0], yMm + setOff[1]];
    const toCut = edgeDistanceMm(cut, at);
    return {
      xMm: at[0],
      yMm: at[1],
      holeMm,
      edgeMm: onPlate || (kind === 'plate' && !noPlate) ? toCut : Math.min(toCut, edgeDistanceMm(over.hole, at)),
      needMm: screwNeedMm(holeMm, figures.screwDiameters),
    };
  });
  const oldScrews = oldScrewsOf(setting, (at) => edgeDistanceMm(bezel, at) <= touchingMm);
  return {
    kind,
    entry: {
      case: which,
      cut,
      bezel,
      setOffMm: [setOff[0], setOff[1]],
      ...(uncovered === undefined ? {} : { uncovered }),
      ...(screws === undefined ? {} : { screws }),
      ...(oldScrews === undefined ? {} : { oldScrews }),
      ...(margins.length === 0 ? {} : { margins }),
      ...(obstacles.length === 0 ? {} : { obstacles }),
    },
  };
};
