import { shapeBounds } from '../../core/fitting/openings/shape-bounds.ts';
import type { Template } from './template.ts';

/** How far a template reaches, from its own middle. */
export interface Extent {
  readonly leftMm: number;
  readonly rightMm: number;
  readonly aboveMm: number;
  readonly belowMm: number;
}

/** How far all that is cut, marked and drilled reaches. */
export const templateExtent = ({ cut, mark, drill }: Template): Extent => {
  const all = [
    ...[...cut, ...mark].map(({ shape }) => shapeBounds(shape)),
    ...drill.map(({ xMm, yMm, holeMm }) => ({
      left: xMm - holeMm,
      right: xMm + holeMm,
      above: yMm + holeMm,
      below: yMm - holeMm,
    })),
  ];
  return {
    leftMm: Math.min(...all.map(({ left }) => left)),
    rightMm: Math.max(...all.map(({ right }) => right)),
    aboveMm: Math.max(...all.map(({ above }) => above)),
    belowMm: Math.min(...all.map(({ below }) => below)),
  };
};
