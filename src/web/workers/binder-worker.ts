import { config } from 'zod';
import { binderOf } from '../../papers/binder/binder.ts';
import type { SetBinder } from '../../papers/pages/page-shape.ts';
import { setBinder } from '../../papers/pages/set-binder.ts';
import type { PdfFile } from '../../papers/pdf/pdf-document.ts';
import { writePdf } from '../../papers/pdf/write-pdf.ts';
import type { BinderAsked, BinderReply } from './binder-reply.ts';
import { faceBytes } from './face-bytes.ts';

// The page forbids code made from text; without this zod would try it and the browser would log a refusal.
config({ jitless: true });

const say = (reply: BinderReply, handedOver: Transferable[] = []): void => postMessage(reply, { transfer: handedOver });

const setPages = (asked: BinderAsked): SetBinder => {
  const setting = setBinder(binderOf(asked), asked.paper);
  let step = setting.next();
  while (step.done !== true) {
    say({ kind: 'chapter', progress: step.value });
    step = setting.next();
  }
  return step.value;
};

const joined = (chunks: readonly Uint8Array[]): Uint8Array<ArrayBuffer> => {
  const bytes = new Uint8Array(chunks.reduce((sum, { byteLength }) => sum + byteLength, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.byteLength;
  }
  return bytes;
};

const writeFile = async (set: SetBinder): Promise<Uint8Array<ArrayBuffer>> => {
  const [{ default: PDFDocument }, faces] = await Promise.all([import('pdfkit'), faceBytes()]);
  const writing = writePdf(set, { makePdf: (options) => new PDFDocument(options) as PdfFile, faces });
  let step = writing.next();
  while (step.done !== true) {
    say({ kind: 'written', done: step.value, of: set.pages.length });
    step = writing.next();
  }
  return joined(await step.value);
};

const make = async (asked: BinderAsked): Promise<void> => {
  const set = setPages(asked);
  say({ kind: 'pages', set });
  const bytes = await writeFile(set);
  say({ kind: 'file', bytes }, [bytes.buffer]);
};

/** Makes a binder and tells of every step; who wants it no more ends the worker. */
addEventListener('message', ({ data }: MessageEvent<BinderAsked>) => {
  // thrown outside of the promise, so that the page hears of it as it hears of any other failure of a worker
  make(data).catch((error: unknown) =>
    setTimeout(() => {
      throw error;
    }),
  );
});
