import type { PathStep } from './path-data.ts';
import { pathData } from './path-data.ts';
import { readPath } from './read-path.ts';
import type { Shape } from './shapes.ts';

const movedStep = (step: PathStep, byMm: { readonly xMm: number; readonly yMm: number }): PathStep => {
  const { xMm, yMm } = byMm;
  switch (step[0]) {
    case 'Z':
      return step;
    case 'C':
      return ['C', step[1] + xMm, step[2] + yMm, step[3] + xMm, step[4] + yMm, step[5] + xMm, step[6] + yMm];
    default:
      return [step[0], step[1] + xMm, step[2] + yMm];
  }
};

/** The same shapes, farther right by `xMm` and farther down by `yMm`. */
export const moveShapes = (shapes: readonly Shape[], byMm: { readonly xMm: number; readonly yMm: number }): Shape[] =>
  shapes.map((shape): Shape => {
    switch (shape.kind) {
      case 'group':
        return { ...shape, shapes: moveShapes(shape.shapes, byMm) };
      case 'path':
        return { ...shape, d: pathData(readPath(shape.d).map((step) => movedStep(step, byMm))) };
      default:
        return { ...shape, xMm: shape.xMm + byMm.xMm, yMm: shape.yMm + byMm.yMm };
    }
  });
