import type { PaperName } from '../pages/paper-sizes.ts';

/**
 * A sheet of labels as plain geometry: where the first label stands, how large each is, what lies between them. `print` where
 * only the upper part of a label is printed on and the clear rest wraps over it.
 */
export interface LabelSheet {
  readonly id: string;
  readonly paper: PaperName;
  readonly columns: number;
  readonly rows: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly leftMm: number;
  readonly topMm: number;
  readonly gapXMm: number;
  readonly gapYMm: number;
  /** height of the white part of a label that wraps itself */
  readonly printMm?: number;
}

/** A tape as long as what stands on it; `printMm` is how much of its width a printer reaches. */
export interface LabelTape {
  readonly id: string;
  readonly widthMm: number;
  readonly printMm: number;
}

const inchMm = 25.4;

/** Sheets of labels that are commonly sold, and two that laminate themselves, for A4 and for Letter. */
export const labelSheets = [
  sheet({ paper: 'a4', columns: 3, rows: 8, widthMm: 70, heightMm: 37, leftMm: 0, topMm: 0.5 }),
  sheet({ paper: 'a4', columns: 5, rows: 13, widthMm: 38.1, heightMm: 21.2, leftMm: 4.75, topMm: 10.7, gapXMm: 2.5 }),
  sheet({ paper: 'a4', columns: 4, rows: 11, widthMm: 48.5, heightMm: 25.4, leftMm: 8, topMm: 8.8 }),
  sheet({
    paper: 'a4',
    columns: 7,
    rows: 7,
    widthMm: 25.4,
    heightMm: 37,
    leftMm: 8.48,
    topMm: 19,
    gapXMm: 2.54,
    printMm: 12.7,
  }),
  sheet({
    paper: 'letter',
    columns: 3,
    rows: 10,
    widthMm: 2.625 * inchMm,
    heightMm: inchMm,
    leftMm: 0.1875 * inchMm,
    topMm: 0.5 * inchMm,
    gapXMm: 0.125 * inchMm,
  }),
  sheet({
    paper: 'letter',
    columns: 4,
    rows: 20,
    widthMm: 1.75 * inchMm,
    heightMm: 0.5 * inchMm,
    leftMm: 0.3 * inchMm,
    topMm: 0.5 * inchMm,
    gapXMm: 0.3 * inchMm,
  }),
  sheet({
    paper: 'letter',
    columns: 7,
    rows: 6,
    widthMm: inchMm,
    heightMm: 1.5 * inchMm,
    leftMm: 0.45 * inchMm,
    topMm: inchMm,
    gapXMm: 0.1 * inchMm,
    printMm: 0.5 * inchMm,
  }),
] as const satisfies readonly LabelSheet[];

function sheet(of: Omit<LabelSheet, 'id' | 'gapXMm' | 'gapYMm'> & Partial<LabelSheet>): LabelSheet {
  const size = `${plain(of.widthMm)}x${plain(of.heightMm)}`;
  const id = `${of.paper}-${of.columns}x${of.rows}-${size}${of.printMm === undefined ? '' : '-wrap'}`;
  return { gapXMm: 0, gapYMm: 0, ...of, id };
}

function plain(mm: number): string {
  return String(Math.round(mm * 10) / 10);
}

/** Tapes of the common widths. */
export const labelTapes: readonly LabelTape[] = [
  { id: 'tape-9', widthMm: 9, printMm: 6.5 },
  { id: 'tape-12', widthMm: 12, printMm: 9 },
  { id: 'tape-18', widthMm: 18, printMm: 14 },
  { id: 'tape-24', widthMm: 24, printMm: 18 },
];

const paperWords: Readonly<Record<PaperName, string>> = { a4: 'A4', letter: 'Letter' };

/**
 * A geometry in words.
 *
 * @example geometryWords(labelSheets[0]) // "A4, 3 x 8, 70 x 37 mm"
 */
export const geometryWords = (geometry: LabelSheet | LabelTape): string => {
  if (!('rows' in geometry)) return `tape, ${geometry.widthMm} mm`;
  const { paper, columns, rows, widthMm, heightMm, printMm } = geometry;
  const size = `${paperWords[paper]}, ${columns} x ${rows}, ${plain(widthMm)} x ${plain(heightMm)} mm`;
  return printMm === undefined ? size : `${size}, laminates itself, ${plain(printMm)} mm to print on`;
};

/** The sheet a paper gets where none is asked for. */
export const usualSheet = (paper: PaperName): LabelSheet => (paper === 'a4' ? labelSheets[1] : labelSheets[4]);
