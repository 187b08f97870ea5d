import type { CircleShape, Ink, PathShape, Shape, TextShape } from '../drawing/shapes.ts';
import { themes } from '../drawing/themes.ts';
import type { PdfDocument } from './pdf-document.ts';

/** The faces by the names they have in the PDF: the same files as on screen. */
export const pdfFaces = { words: 'words', semibold: 'words-semibold', figures: 'figures' } as const;

const colours: Readonly<Record<Ink, string>> = themes.paper;

const isSeen = (ink: Ink | undefined): ink is Exclude<Ink, 'none'> => ink !== undefined && ink !== 'none';

const paint = (pdf: PdfDocument, { stroke, fill }: PathShape | CircleShape): void => {
  const isStroked = stroke !== undefined && isSeen(stroke.ink);
  if (isStroked) {
    pdf.lineWidth(stroke.widthMm);
    if (stroke.dashMm === undefined) pdf.undash();
    else pdf.dash([...stroke.dashMm], {});
    pdf.strokeColor(colours[stroke.ink]);
  }
  if (isSeen(fill)) pdf.fillColor(colours[fill]);
  if (isStroked && isSeen(fill)) pdf.fillAndStroke();
  else if (isStroked) pdf.stroke();
  else pdf.fill();
};

const faceOf = ({ face, weight }: TextShape): string =>
  face === 'figures' ? pdfFaces.figures : weight === 'semibold' ? pdfFaces.semibold : pdfFaces.words;

const drawText = (pdf: PdfDocument, shape: TextShape): void => {
  const { text, xMm, yMm, sizeMm, anchor = 'start', ink } = shape;
  if (text === '' || !isSeen(ink)) return;
  pdf.font(faceOf(shape), sizeMm);
  pdf.fillColor(colours[ink]);
  const backMm = anchor === 'start' ? 0 : pdf.widthOfString(text) * (anchor === 'end' ? 1 : 0.5);
  pdf.text(text, xMm - backMm, yMm, { lineBreak: false, baseline: 'alphabetic' });
};

/** Draws shapes on a page whose unit is the millimetre: paths as paths, text as text in the embedded faces. */
export const drawShapes = (pdf: PdfDocument, shapes: readonly Shape[]): void => {
  for (const shape of shapes) {
    if (shape.kind === 'group') drawShapes(pdf, shape.shapes);
    else if (shape.kind === 'text') drawText(pdf, shape);
    else if ((shape.stroke !== undefined && isSeen(shape.stroke.ink)) || isSeen(shape.fill)) {
      if (shape.kind === 'path') pdf.path(shape.d);
      else pdf.circle(shape.xMm, shape.yMm, shape.radiusMm);
      paint(pdf, shape);
    }
  }
};
