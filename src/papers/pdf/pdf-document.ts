/** An entry of the outline as the library keeps it. */
export interface PdfOutline {
  readonly addItem: (title: string, options?: { expanded?: boolean }) => PdfOutline;
}

interface PdfGlyph {
  readonly id: number;
  readonly advanceWidth: number;
  readonly codePoints: readonly number[];
}

/** A face of the library. It is not part of what the library promises; the tests that read our files would tell of a change. */
export interface PdfFont {
  readonly id: string;
  ref(): unknown;
  readonly font: { glyphForCodePoint(codePoint: number): PdfGlyph };
  /** the glyphs that go into the file; tells the place each has there */
  readonly subset: { includeGlyph(id: number): number };
  /** advance widths in thousandths of the size, and letters, by place */
  readonly widths: (number | undefined)[];
  readonly unicode: (readonly number[] | undefined)[];
  /** from units of the face to thousandths */
  readonly scale: number;
}

/**
 * What is used of the library that writes PDF, so that this room needs no library: the same pages are written at the terminal
 * and in a browser’s worker, each with its own build of it.
 */
export interface PdfDocument {
  readonly outline: PdfOutline;
  /** the face chosen last */
  readonly _font: PdfFont;
  readonly page: { readonly fonts: Record<string, unknown> };
  addPage(options: { size: [number, number]; margin: number }): unknown;
  registerFont(name: string, bytes: unknown): unknown;
  font(name: string, sizePt: number): unknown;
  widthOfString(text: string): number;
  text(text: string, x: number, y: number, options: { lineBreak: false; baseline: 'alphabetic' }): unknown;
  addContent(operators: string): unknown;
  save(): unknown;
  restore(): unknown;
  translate(x: number, y: number): unknown;
  scale(factor: number): unknown;
  path(d: string): unknown;
  circle(x: number, y: number, radius: number): unknown;
  lineWidth(width: number): unknown;
  dash(lengths: number[], options: Record<string, never>): unknown;
  undash(): unknown;
  fillColor(colour: string): unknown;
  strokeColor(colour: string): unknown;
  fill(): unknown;
  stroke(): unknown;
  fillAndStroke(): unknown;
  addNamedDestination(name: string, kind: 'XYZ', x: number, y: number, zoom: null): unknown;
  goTo(x: number, y: number, width: number, height: number, name: string): unknown;
}

/** A PDF in the making as the library hands it out: pages are written into it, bytes come out of it. */
export interface PdfFile extends PdfDocument {
  readonly _root: { readonly data: { ViewerPreferences?: PdfReference } };
  ref(data: Readonly<Record<string, unknown>>): PdfReference;
  on(event: 'data', hear: (bytes: Uint8Array) => void): unknown;
  on(event: 'end', hear: () => void): unknown;
  on(event: 'error', hear: (error: Error) => void): unknown;
  end(): void;
}

interface PdfReference {
  readonly data: Record<string, unknown>;
}
