import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { SetBinder } from '../papers/pages/page-shape.ts';
import { pdfFaces } from '../papers/pdf/draw-shapes.ts';
import type { PdfFile } from '../papers/pdf/pdf-document.ts';
import { writePdf } from '../papers/pdf/write-pdf.ts';

const resolveFont = createRequire(import.meta.url).resolve;

/** The faces of the app, from the packages that bring them. */
const faceFiles = {
  [pdfFaces.words]: '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
  [pdfFaces.semibold]: '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
  [pdfFaces.figures]: '@expo-google-fonts/b612-mono/400Regular/B612Mono_400Regular.ttf',
} as const;

/**
 * The pages of a binder as one PDF.
 *
 * @example await binderPdf(set) // bytes that begin with "%PDF-1.7"
 */
export const binderPdf = async (set: SetBinder): Promise<Uint8Array> => {
  // only who prints loads the library: it takes longer than many a plan
  const { default: PDFDocument } = await import('pdfkit');
  const faces = Object.fromEntries(
    Object.entries(faceFiles).map(([name, file]) => [name, readFileSync(resolveFont(file))]),
  );
  const writing = writePdf(set, { makePdf: (options) => new PDFDocument(options) as PdfFile, faces });
  let step = writing.next();
  while (step.done !== true) step = writing.next();
  return Buffer.concat(await step.value);
};
