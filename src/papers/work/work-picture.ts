import { moveShapes } from '../drawing/move-shapes.ts';
import type { Drawing, Shape, TextShape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { dayHeads } from './day-heads.ts';
import { handRopes } from './hand-ropes.ts';
import { lampLanes } from './lamp-lanes.ts';
import { orderLane } from './order-lane.ts';
import type { PictureInput } from './picture-input.ts';
import { type WorkAxis, workAxes } from './work-axis.ts';
import { workSizes } from './work-sizes.ts';

/** The picture of the work: names at the left, which stand while the days pass beside them. */
export interface WorkPicture {
  readonly axis: WorkAxis;
  readonly names: Drawing;
  readonly days: Drawing;
}

const { gutterMm, headMm, laneMm, nameMm } = workSizes;

const nameText = (text: string, yMm: number, more: Partial<TextShape> = {}): TextShape => {
  const style = { face: 'words', ...more } as const;
  const sizeMm = Math.min(nameMm, (nameMm * (gutterMm - 2)) / textWidthMm(text, { sizeMm: nameMm, ...style }));
  return { kind: 'text', text, xMm: gutterMm - 1.4, yMm, sizeMm, anchor: 'end', ink: 'ink', ...style };
};

const pictureOn = (input: PictureInput, axis: WorkAxis): WorkPicture => {
  const work = { ...input, axis };
  const names: Shape[] = [];
  const days: Shape[] = [];
  let topMm = headMm;
  for (const { name, shapes, heightMm, lineMm } of handRopes(work)) {
    names.push(nameText(name, topMm + lineMm + 1, { weight: 'semibold' }));
    days.push(...moveShapes(shapes, { xMm: 0, yMm: topMm }));
    topMm += heightMm;
  }
  const orders = orderLane(work);
  if (orders !== undefined) {
    names.push(nameText('to order', topMm + laneMm / 2 + 1.05));
    days.push(...moveShapes(orders, { xMm: 0, yMm: topMm }));
    topMm += laneMm;
  }
  // where there is no order nobody knows what will be dark
  const isOrdered = input.phases.some(({ order }) => order !== undefined);
  for (const { id, name, shapes } of isOrdered ? lampLanes(work) : []) {
    names.push(nameText(name, topMm + laneMm / 2 + 1.05, { about: [id] }));
    days.push(...moveShapes(shapes, { xMm: 0, yMm: topMm }));
    topMm += laneMm;
  }
  const heightMm = topMm + 2;
  return {
    axis,
    names: { widthMm: gutterMm, heightMm, shapes: names },
    days: {
      title: 'The days of the work, who does what, and what is dark',
      widthMm: axis.widthMm + 0.5,
      heightMm,
      shapes: [...dayHeads(work, heightMm - 1), ...days],
    },
  };
};

/** A day as wide as its numbers need on a screen, and on paper, where a week stands across. */
const dayWidths = { screen: 44, paper: 27 } as const;

/** All days in one line, to be moved along beside the names. */
export const workPicture = (input: PictureInput): WorkPicture => {
  const [axis = { columns: [], widthMm: 0, xOf: () => 0, holds: () => false }] = workAxes(input.phases, {
    dayMm: dayWidths.screen,
    widthMm: Number.POSITIVE_INFINITY,
  });
  return pictureOn(input, axis);
};

/** The days in strips one under another, each with its names, none wider than a page. */
export const workStrips = (input: PictureInput, widthMm: number): Drawing[] =>
  workAxes(input.phases, { dayMm: dayWidths.paper, widthMm: widthMm - gutterMm - 0.5 }).map((axis) => {
    const { names, days } = pictureOn(input, axis);
    return {
      title: days.title ?? '',
      widthMm,
      heightMm: days.heightMm,
      shapes: [...names.shapes, ...moveShapes(days.shapes, { xMm: gutterMm, yMm: 0 })],
    };
  });
