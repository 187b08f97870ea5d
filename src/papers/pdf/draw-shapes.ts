import type { CircleShape, Ink, PathShape, Shape, TextShape } from '../drawing/shapes.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { themes } from '../drawing/themes.ts';
import type { PdfDocument, PdfFont } from './pdf-document.ts';

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

/** From this size on pairs of letters are set closer where the face says so; in smaller type nobody sees it, and it takes long. */
const kernedFromMm = 6;

const codes = new WeakMap<PdfFont, Map<string, string>>();

/** What the library’s own `encode` does for one glyph, without asking the rules of the face for each. */
const glyphCode = (font: PdfFont, character: string): string => {
  const glyph = font.font.glyphForCodePoint(character.codePointAt(0) ?? 0);
  const at = font.subset.includeGlyph(glyph.id);
  font.widths[at] ??= glyph.advanceWidth * font.scale;
  font.unicode[at] ??= glyph.codePoints;
  return at.toString(16).padStart(4, '0');
};

const codesOf = (font: PdfFont): Map<string, string> => {
  const known = codes.get(font) ?? new Map<string, string>();
  codes.set(font, known);
  return known;
};

/** The glyphs of a text as the file has them. */
const shownText = (font: PdfFont, text: string): string => {
  const known = codesOf(font);
  let shown = '';
  for (const character of text) {
    const code = known.get(character) ?? glyphCode(font, character);
    known.set(character, code);
    shown += code;
  }
  return shown;
};

/** A text letter by letter, each as wide as it was measured: what a page holds thousands of. */
const drawPlain = (
  pdf: PdfDocument,
  text: string,
  { leftMm, yMm, sizeMm }: { leftMm: number; yMm: number; sizeMm: number },
): void => {
  const font = pdf._font;
  pdf.page.fonts[font.id] ??= font.ref();
  const shown = shownText(font, text);
  // the page runs downwards, letters stand upright
  pdf.addContent(
    `BT /${font.id} ${sizeMm.toFixed(3)} Tf 1 0 0 -1 ${leftMm.toFixed(3)} ${yMm.toFixed(3)} Tm <${shown}> Tj ET`,
  );
};

const drawText = (pdf: PdfDocument, shape: TextShape): void => {
  const { xMm, yMm, sizeMm, anchor = 'start', ink } = shape;
  const text = shape.text.normalize('NFC');
  if (text === '' || !isSeen(ink)) return;
  pdf.font(faceOf(shape), sizeMm);
  pdf.fillColor(colours[ink]);
  const isKerned = sizeMm >= kernedFromMm;
  const widthMm = anchor === 'start' ? 0 : isKerned ? pdf.widthOfString(text) : textWidthMm(text, shape);
  const leftMm = xMm - widthMm * (anchor === 'middle' ? 0.5 : 1);
  if (isKerned) pdf.text(text, leftMm, yMm, { lineBreak: false, baseline: 'alphabetic' });
  else drawPlain(pdf, text, { leftMm, yMm, sizeMm });
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
