import { type Box, contains, grown, textBox, textsOf } from '../drawing/box.ts';
import { flattenPath } from '../drawing/flatten-path.ts';
import type { Piece } from '../drawing/piece.ts';
import { readPath } from '../drawing/read-path.ts';
import type { Drawing, Shape, TextShape } from '../drawing/shapes.ts';
import { clashes, leavesOf } from '../sheet/on-the-sheet.test-helper.ts';

/** Texts of a drawing that touch another. */
export const touching = ({ shapes }: Drawing): string[] => clashes(textsOf(shapes), textBox, ({ text }) => text);

/** Texts that reach over the frame of a sheet, which is its first shape. */
export const outsideFrame = ({ shapes }: Drawing): string[] => {
  const [frame] = leavesOf(shapes);
  if (frame?.kind !== 'path') throw new Error('A sheet begins with its frame.');
  const points = flattenPath(readPath(frame.d)).flat();
  const box: Box = {
    leftMm: Math.min(...points.map(([xMm]) => xMm)),
    rightMm: Math.max(...points.map(([xMm]) => xMm)),
    topMm: Math.min(...points.map(([, yMm]) => yMm)),
    bottomMm: Math.max(...points.map(([, yMm]) => yMm)),
  };
  return textsOf(shapes)
    .filter((text) => !contains(grown(box, -0.3), textBox(text)))
    .map(({ text }) => text);
};

/** The smallest text of a drawing. */
export const smallestMm = ({ shapes }: Drawing): number => Math.min(...textsOf(shapes).map(({ sizeMm }) => sizeMm));

/** The thinnest stroke of a drawing. */
export const thinnestMm = ({ shapes }: Drawing): number =>
  Math.min(
    ...leavesOf(shapes).flatMap((shape) =>
      shape.kind === 'text' || shape.stroke === undefined ? [] : [shape.stroke.widthMm],
    ),
  );

/** Labels of all groups of a drawing. */
export const groupLabels = (shapes: readonly Shape[]): string[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? [shape.label ?? '', ...groupLabels(shape.shapes)] : []));

/** The first text that says something, moved onto the second: what a faulty drawing would look like. */
export const withMovedText = (drawing: Drawing): Drawing => {
  const texts = textsOf(drawing.shapes).filter(({ text }) => text.length > 3);
  const [from, to] = [texts.at(-1), texts.at(-4)];
  if (from === undefined || to === undefined) throw new Error('The drawing has no texts to move.');
  const move = (shapes: readonly Shape[]): Shape[] =>
    shapes.map((shape): Shape => {
      if (shape.kind === 'group') return { ...shape, shapes: move(shape.shapes) };
      return shape === from ? ({ ...from, xMm: to.xMm, yMm: to.yMm } satisfies TextShape) : shape;
    });
  return { ...drawing, shapes: move(drawing.shapes) };
};

/** Straight pieces of every line of the plan on a drawing, with the ids of what they stand for. */
export const wiringOf = ({ shapes }: Drawing): { piece: Piece; about: readonly string[] }[] =>
  leavesOf(shapes).flatMap((shape) => {
    const about = shape.about ?? [];
    if (shape.kind !== 'path' || shape.stroke === undefined || !about.some((id) => /^[a-z-]+:.+~/.test(id))) return [];
    return flattenPath(readPath(shape.d)).map((piece) => ({ piece, about }));
  });
