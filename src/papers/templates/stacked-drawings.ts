import { moveShapes } from '../drawing/move-shapes.ts';
import type { Drawing, Shape } from '../drawing/shapes.ts';
import { fittingSizeMm } from './fitting-size.ts';

/** The room of an upright page, and a little between two drawings. */
const page = { widthMm: 176, heightMm: 232, gapMm: 9 } as const;

/** A drawing with the title it has on the page. */
export interface Titled {
  readonly title: string;
  readonly about: readonly string[];
  readonly drawing: Drawing;
}

interface Stack {
  readonly about: readonly string[];
  readonly drawing: Drawing;
}

const titleMm = 6;

const titleStyle = { sizeMm: 3.6, face: 'words', weight: 'semibold' } as const;

const titleShape = (text: string, yMm: number): Shape => ({
  kind: 'text',
  xMm: 2,
  yMm,
  text,
  ...titleStyle,
  sizeMm: fittingSizeMm(text, titleStyle, page.widthMm - 4),
  ink: 'ink',
});

const heightOf = ({ drawing }: Titled): number => titleMm + drawing.heightMm;

const stacked = (all: readonly Titled[]): Stack => {
  let yMm = 0;
  const shapes = all.flatMap((one): Shape[] => {
    const topMm = yMm;
    yMm += heightOf(one) + page.gapMm;
    return [titleShape(one.title, topMm + 4), ...moveShapes(one.drawing.shapes, { xMm: 0, yMm: topMm + titleMm })];
  });
  return {
    about: all.flatMap(({ about }) => about),
    drawing: {
      title: all.map(({ title }) => title).join('; '),
      widthMm: page.widthMm,
      heightMm: yMm - page.gapMm,
      shapes,
    },
  };
};

/** Drawings under each other, as many as an upright page has room for, in their order. */
export const stackedDrawings = (all: readonly Titled[]): Stack[] => {
  const stacks: Titled[][] = [];
  let usedMm = Number.POSITIVE_INFINITY;
  for (const one of all) {
    usedMm += heightOf(one) + page.gapMm;
    if (usedMm - page.gapMm > page.heightMm) {
      stacks.push([]);
      usedMm = heightOf(one) + page.gapMm;
    }
    stacks.at(-1)?.push(one);
  }
  return stacks.map(stacked);
};
