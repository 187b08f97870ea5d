import type { Block } from '../binder/binder-shape.ts';
import type { Drawing } from '../drawing/shapes.ts';
import type { PageFlow } from './page-flow.ts';
import { lineShapes, type Piece } from './piece.ts';
import { typeStyles } from './type-styles.ts';

/** Under a drawing stands at what scale it was printed. */
const captionMm = 5.5;

/** How much of the size a drawing has of itself fits into a room, never more than all of it. */
const fittingScale = ({ widthMm, heightMm }: Drawing, room: { widthMm: number; heightMm: number }): number =>
  Math.min(1, room.widthMm / widthMm, room.heightMm / heightMm);

type DrawingBlock = Extract<Block, { readonly kind: 'drawing' }>;

/** "true size", or by how much it is smaller. */
const scaleWords = (scale: number, isUpright: boolean): string[] => {
  if (scale < 0.999) return [`Printed at ${Math.round(scale * 100)} % of its own size.`];
  return isUpright ? [] : ['Printed at its own size.'];
};

/** Whether a drawing stands larger on a page that is turned, and may. */
export const wantsTurned = ({ drawing: { widthMm, heightMm }, isUpright = false }: DrawingBlock): boolean =>
  !isUpright && widthMm > heightMm;

/** Whether a drawing is a sheet of this paper with its frame: it is printed from edge to edge, at its own size. */
const isWholeSheet = ({ widthMm, heightMm }: Drawing, page: { widthMm: number; heightMm: number }): boolean =>
  Math.abs(widthMm - page.widthMm) < 0.5 && Math.abs(heightMm - page.heightMm) < 0.5;

/** A framed sheet on a page of its own. Headings before it are in the outline and the contents; its frame names it on paper. */
const placeWholeSheet = (flow: PageFlow, drawing: Drawing, lead: readonly Piece[], about: readonly string[]): void => {
  const page = flow.page();
  const unseen = { heightMm: 0, gapMm: 0, shapes: () => [] };
  page.insets.push({ drawing, xMm: 0, yMm: 0, scale: 1 });
  flow.place([...lead.map((piece) => ({ ...piece, ...unseen })), { ...unseen, says: [], about }]);
  page.yMm = page.area.bottomMm;
  page.isWhole = true;
};

/** Sets a drawing into what is left of a page, or onto a page of its own where it would be much smaller there. */
export const placeDrawing = (
  flow: PageFlow,
  block: DrawingBlock,
  lead: readonly Piece[],
  about: readonly string[],
): void => {
  const { drawing, isUpright = false } = block;
  flow.turnTo(wantsTurned(block), !isUpright);
  if (isWholeSheet(drawing, flow.page().area)) {
    placeWholeSheet(flow, drawing, lead, about);
    return;
  }
  flow.place(lead.map((piece) => ({ ...piece, isChained: false })));
  const { area, yMm } = flow.page();
  const gapMm = lead.length === 0 ? 0 : 2.5;
  const room = { widthMm: area.rightMm - area.leftMm, heightMm: area.bottomMm - yMm - gapMm - captionMm };
  const scale = fittingScale(drawing, room);
  const heightMm = drawing.heightMm * scale;
  flow.page().insets.push({
    drawing,
    xMm: area.leftMm + (room.widthMm - drawing.widthMm * scale) / 2,
    yMm: yMm + gapMm,
    scale,
  });
  flow.place([
    {
      heightMm: heightMm + captionMm,
      gapMm,
      shapes: ({ leftMm, topMm }) =>
        lineShapes(scaleWords(scale, isUpright), typeStyles.foot, { leftMm, topMm: topMm + heightMm + 1 }),
      says: [],
      about,
    },
  ]);
};
