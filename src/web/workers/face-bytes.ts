import figuresUrl from '@expo-google-fonts/b612-mono/400Regular/B612Mono_400Regular.ttf?url';
import wordsUrl from '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf?url';
import semiboldUrl from '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf?url';
import { pdfFaces } from '../../papers/pdf/draw-shapes.ts';
import type { FaceBytes } from '../../papers/pdf/write-pdf.ts';

const faceUrls = {
  [pdfFaces.words]: wordsUrl,
  [pdfFaces.semibold]: semiboldUrl,
  [pdfFaces.figures]: figuresUrl,
} as const;

/** The faces of the page, as bytes to be embedded: the same files, which the browser has already. */
export const faceBytes = async (): Promise<FaceBytes> =>
  Object.fromEntries(
    await Promise.all(
      Object.entries(faceUrls).map(
        async ([name, url]) => [name, new Uint8Array(await (await fetch(url)).arrayBuffer())] as const,
      ),
    ),
  );
