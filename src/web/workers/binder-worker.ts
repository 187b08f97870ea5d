import { config } from 'zod';
import type { PdfFile } from '../../papers/pdf/pdf-document.ts';
import type { FaceBytes, MakePdf } from '../../papers/pdf/write-pdf.ts';
import type { BinderAsked } from './binder-protocol.ts';
import { binderSession } from './binder-session.ts';
import { faceBytes } from './face-bytes.ts';
import { plannedBoat } from './planned-boat.ts';

// The page forbids code made from text; without this zod would try it and the browser would log a refusal.
config({ jitless: true });

/** As long as the planner gives to the layouts of a boat that is opened. */
const patienceMs = 20_000;

let brought: Promise<{ makePdf: MakePdf; faces: FaceBytes }> | undefined;

/** Brings the library that writes PDF and the faces, once somebody wants a file. */
const bringPdf = async (): Promise<{ makePdf: MakePdf; faces: FaceBytes }> => {
  const [{ default: PDFDocument }, faces] = await Promise.all([import('pdfkit'), faceBytes()]);
  return { makePdf: (options) => new PDFDocument(options) as PdfFile, faces };
};

const hear = binderSession({
  nowMs: () => performance.now(),
  pause: () => new Promise((resolve) => setTimeout(resolve, 0)),
  post: (reply) => postMessage(reply),
  planned: (boat) => plannedBoat(boat, patienceMs),
  bringPdf: () => {
    brought ??= bringPdf();
    return brought;
  },
});

addEventListener('message', ({ data }: MessageEvent<BinderAsked>) => void hear(data));
