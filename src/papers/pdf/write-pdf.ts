import type { SetBinder } from '../pages/page-shape.ts';
import type { PdfFile } from './pdf-document.ts';
import { writePages } from './write-pages.ts';

/** A PDF must say when it was made; where no day is given this one is, so that equal boats give equal bytes. */
const noDay = '1970-01-01';

/** The library, in the build of the place where it runs. */
export type MakePdf = (options: Readonly<Record<string, unknown>>) => PdfFile;

/** The faces by name, each the bytes of its file. */
export type FaceBytes = Readonly<Record<string, Uint8Array>>;

const optionsOf = ({ title, dateIso }: SetBinder): Readonly<Record<string, unknown>> => {
  const made = new Date(`${dateIso ?? noDay}T00:00:00Z`);
  return {
    autoFirstPage: false,
    pdfVersion: '1.7',
    lang: 'en-GB',
    displayTitle: true,
    font: null,
    info: { Title: title, Creator: 'Fairlead', Producer: 'Fairlead', CreationDate: made, ModDate: made },
  };
};

/**
 * A binder as one PDF: every face embedded, an outline, and the wish that a reader prints it at its own size. After each page
 * it says how many are done, and whoever asked may stop asking; the last step gives the bytes once they are packed.
 */
export function* writePdf(
  set: SetBinder,
  { makePdf, faces }: { makePdf: MakePdf; faces: FaceBytes },
): Generator<number, Promise<Uint8Array[]>> {
  const pdf = makePdf(optionsOf(set));
  const chunks: Uint8Array[] = [];
  const packed = new Promise<Uint8Array[]>((done, failed) => {
    pdf.on('data', (bytes) => chunks.push(bytes));
    pdf.on('end', () => done(chunks));
    pdf.on('error', failed);
  });
  for (const [name, bytes] of Object.entries(faces)) pdf.registerFont(name, bytes);
  yield* writePages(pdf, set);
  const wishes = pdf._root.data.ViewerPreferences ?? pdf.ref({});
  wishes.data.PrintScaling = 'None';
  pdf._root.data.ViewerPreferences = wishes;
  pdf.end();
  return packed;
}
