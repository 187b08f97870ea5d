import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { Drawing, Shape } from '../drawing/shapes.ts';
import { drawnBoat } from '../sheet/drawn-boat.ts';
import { sheetUnits } from '../sheet/sheet-units.ts';
import { unitMarks } from '../sheet/unit-marks.ts';
import { laneBreaks } from './break-marks.ts';
import { laneTree } from './lane-tree.ts';
import { breaksOn, footShapes, type LanesKnown, lineDiagram } from './line-diagram.ts';
import { gutterMm, type LaidLane, layLane, lyingLane } from './lying-lane.ts';
import { splitLane } from './split-lane.ts';

interface Request {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly units?: keyof typeof sheetUnits;
}

/** A page of the data network; `isAlong` where it is drawn along the boat, bow to the right. */
export interface LinePage extends Drawing {
  readonly isAlong: boolean;
}

const betweenMm = 4;
const topMm = 2;

const heightOf = ({ aboveMm, belowMm }: LaidLane): number => aboveMm + belowMm + betweenMm;

/** Lanes under one another until a page is full. */
const stacked = (lanes: readonly LaidLane[], roomMm: number): LaidLane[][] => {
  const pages: LaidLane[][] = [];
  let usedMm = 0;
  for (const lane of lanes) {
    const last = pages.at(-1);
    if (last === undefined || usedMm + heightOf(lane) > roomMm) {
      pages.push([lane]);
      usedMm = heightOf(lane);
    } else {
      last.push(lane);
      usedMm += heightOf(lane);
    }
  }
  return pages.length === 0 ? [[]] : pages;
};

const pageShapes = (lanes: readonly LaidLane[], known: LanesKnown): { shapes: Shape[]; bottomMm: number } => {
  let atMm = topMm;
  const shapes = lanes.map((laid) => {
    const yMm = atMm + laid.aboveMm;
    atMm += heightOf(laid);
    return lyingLane(laid, yMm, { index: known.index, breaks: known.breaks, feet: new Map() });
  });
  return { shapes, bottomMm: atMm };
};

/**
 * The data network of a boat on pages of one size: on one along the boat where it fits, else its lanes in parts that do, one
 * under the other. Millimetres.
 */
export const linePages = ({ boat, plan, widthMm, heightMm, units = 'metres' }: Request): LinePage[] => {
  const whole = lineDiagram({ boat, plan, widthMm, units });
  if (whole.widthMm <= widthMm && whole.heightMm <= heightMm) return [{ ...whole, isAlong: true }];
  const index = drawnBoat(boat);
  const marks = unitMarks({ boat, index, plan });
  const tree = laneTree({ plan, index, marks, units: sheetUnits[units], withTies: false });
  const lanes = tree.flatMap((lane) => splitLane(lane, index, widthMm));
  const labels = new Map(marks.map(({ kit, label }) => [kit.id, label]));
  const breaks = breaksOn(lanes, laneBreaks(plan, labels));
  const scale = { widthMm, zeroMm: gutterMm + 4, mmPerM: (widthMm - gutterMm - 18) / boat.hull.lengthM };
  const laid = lanes.map((lane) => layLane(lane, index, scale, new Set()));
  const known: LanesKnown = { boat, index, lanes, breaks, units: sheetUnits[units] };
  const foot = footShapes(known, marks, { topMm: 0, widthMm });
  const roomMm = heightMm - foot.bottomMm - topMm;
  return stacked(laid, roomMm).map((page) => {
    const { shapes } = pageShapes(page, known);
    return {
      title: `${boat.name}: her lines of data`,
      widthMm,
      heightMm,
      isAlong: false,
      shapes: [...shapes, ...footShapes(known, marks, { topMm: heightMm - foot.bottomMm, widthMm }).shapes],
    };
  });
};
