import type { Bookmark, Page, SetBinder } from '../pages/page-shape.ts';
import { drawShapes } from './draw-shapes.ts';
import type { PdfDocument, PdfOutline } from './pdf-document.ts';

/** Points of a PDF to a millimetre: a point is 1/72 in (ISO 32000-1, 8.3.2.3). */
export const pointsPerMm = 72 / 25.4;

const nameOf = (page: number): string => `sheet-${page + 1}`;

const drawPage = (pdf: PdfDocument, { shapes, insets, links }: Page): void => {
  pdf.save();
  pdf.scale(pointsPerMm);
  for (const { drawing, xMm, yMm, scale } of insets) {
    pdf.save();
    pdf.translate(xMm, yMm);
    if (scale !== 1) pdf.scale(scale);
    drawShapes(pdf, drawing.shapes);
    pdf.restore();
  }
  drawShapes(pdf, shapes);
  for (const { leftMm, topMm, widthMm, heightMm, toPage } of links)
    pdf.goTo(leftMm, topMm, widthMm, heightMm, nameOf(toPage));
  pdf.restore();
};

/** Adds the bookmarks of one page; headings hang under the chapter that was begun last. */
const addBookmarks = (
  root: PdfOutline,
  chapter: PdfOutline | undefined,
  own: readonly Bookmark[],
): PdfOutline | undefined => {
  let open = chapter;
  for (const { title, level } of own) {
    if (level === 0) open = root.addItem(title);
    else (open ?? root).addItem(title);
  }
  return open;
};

/** Writes pages into a PDF, one after the other; after each it says how many are done, and whoever asked may stop asking. */
export function* writePages(pdf: PdfDocument, { pages, bookmarks }: SetBinder): Generator<number, void> {
  let chapter: PdfOutline | undefined;
  for (const [at, page] of pages.entries()) {
    pdf.addPage({ size: [page.widthMm * pointsPerMm, page.heightMm * pointsPerMm], margin: 0 });
    pdf.addNamedDestination(nameOf(at), 'XYZ', 0, 0, null);
    chapter = addBookmarks(
      pdf.outline,
      chapter,
      bookmarks.filter((mark) => mark.page === at),
    );
    drawPage(pdf, page);
    yield at + 1;
  }
}
