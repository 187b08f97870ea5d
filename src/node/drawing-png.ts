import { createRequire } from 'node:module';
import type { Drawing } from '../papers/drawing/shapes.ts';
import { toSvg } from '../papers/drawing/to-svg.ts';

const resolveFont = createRequire(import.meta.url).resolve;

/** The faces of the app by file: a picture is the same on every machine, whatever faces that has. */
const fontFiles = [
  '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
  '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
  '@expo-google-fonts/b612-mono/400Regular/B612Mono_400Regular.ttf',
];

/** Fine enough to be printed in its own size: 200 dots to the inch. */
const dotsPerMm = 200 / 25.4;

/**
 * A drawing as a PNG, black on white as it is printed.
 *
 * @example await drawingPng(sheet.drawing) // bytes that begin with 0x89 "PNG"
 */
export const drawingPng = async (drawing: Drawing): Promise<Uint8Array> => {
  // only who writes pictures loads the library
  const { Resvg } = await import('@resvg/resvg-js');
  const picture = new Resvg(toSvg(drawing, 'paper'), {
    font: {
      fontFiles: fontFiles.map((file) => resolveFont(file)),
      loadSystemFonts: false,
      defaultFontFamily: 'Source Sans 3',
    },
    fitTo: { mode: 'width', value: Math.round(drawing.widthMm * dotsPerMm) },
  });
  return picture.render().asPng();
};
