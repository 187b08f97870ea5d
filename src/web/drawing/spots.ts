export interface At {
  readonly x: number;
  readonly y: number;
}

/** A straight stretch of the drawing in pixels of the window; a point is one whose ends are the same. */
export interface Spot {
  readonly from: At;
  readonly to: At;
}

const pointSpot = (at: At): Spot => ({ from: at, to: at });

/**
 * How far a point is from the nearest point of a stretch, pixels.
 *
 * @example awayFrom({ from: { x: 0, y: 0 }, to: { x: 10, y: 0 } }, { x: 5, y: 3 }) // 3
 */
export const awayFrom = ({ from, to }: Spot, at: At): number => {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((at.x - from.x) * dx + (at.y - from.y) * dy) / square;
  const near = Math.min(1, Math.max(0, share));
  return Math.hypot(from.x + near * dx - at.x, from.y + near * dy - at.y);
};

/** The small marks that stand for an id: not the balloons, which are pressed, nor long lines. */
export const marksOf = (frame: Element, id: string): Element[] =>
  [...frame.querySelectorAll(`[data-about~="${CSS.escape(id)}"]`)].filter((element) => {
    const { width, height } = element.getBoundingClientRect();
    return !element.closest('.balloon') && width < 30 && height < 30;
  });

/** Where a mark stands now. */
export const markSpot = (element: Element): Spot => {
  const { left, right, top, bottom } = element.getBoundingClientRect();
  return pointSpot({ x: (left + right) / 2, y: (top + bottom) / 2 });
};

/** Points of the sheet, in millimetres of it, as they lie in the window now; nothing while the sheet is not there. */
const onWindow = (frame: Element, points: readonly (readonly [number, number])[]): At[] => {
  const layer = frame.querySelector<SVGGElement>('.sheet-layer');
  const matrix = layer?.getScreenCTM();
  return matrix == null ? [] : points.map(([x, y]) => new DOMPoint(x, y).matrixTransform(matrix));
};

/** Where a point of the window lies on the sheet now, in millimetres of it; undefined while the sheet is not there. */
export const onSheet = (frame: Element, at: At): readonly [xMm: number, yMm: number] | undefined => {
  const matrix = frame.querySelector<SVGGElement>('.sheet-layer')?.getScreenCTM();
  if (matrix == null) return undefined;
  const { x, y } = new DOMPoint(at.x, at.y).matrixTransform(matrix.inverse());
  return [x, y];
};

/** A point of the sheet, in millimetres of it. */
export const sheetPoint = (frame: Element, point: readonly [number, number]): Spot[] =>
  onWindow(frame, [point]).map(pointSpot);

/** Points of the sheet, in millimetres of it, joined by straight stretches. */
export const sheetStretches = (frame: Element, points: readonly (readonly [number, number])[]): Spot[] => {
  const found = onWindow(frame, points);
  return found.slice(1).flatMap((to, at) => {
    const from = found[at];
    return from === undefined ? [] : [{ from, to }];
  });
};
