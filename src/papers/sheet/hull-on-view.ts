import type { HullPart } from '../../core/facts/hull-patterns.ts';
import { pathShape } from '../drawing/marks.ts';
import type { Ink, PathShape, Stroke } from '../drawing/shapes.ts';
import { onView, type View } from './view.ts';

const looks: Readonly<Record<HullPart['role'], { stroke: Stroke; fill?: Ink }>> = {
  hull: { stroke: { ink: 'ink', widthMm: 0.42 }, fill: 'paper' },
  underbody: { stroke: { ink: 'ink', widthMm: 0.25 }, fill: 'paper' },
  house: { stroke: { ink: 'ink', widthMm: 0.28 }, fill: 'paper' },
  glass: { stroke: { ink: 'quiet', widthMm: 0.18 }, fill: 'water' },
  spar: { stroke: { ink: 'ink', widthMm: 0.25 }, fill: 'paper' },
  trim: { stroke: { ink: 'quiet', widthMm: 0.15 } },
  rig: { stroke: { ink: 'quiet', widthMm: 0.12 } },
};

/** The boat's own lines in one view, thin enough for the wiring to stand out. */
export const hullOnView = (view: View, parts: readonly HullPart[]): PathShape[] =>
  parts.map((part) =>
    pathShape(
      part.steps.map((step) => onView(view, step)),
      looks[part.role],
    ),
  );
