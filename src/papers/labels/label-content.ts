import { labelFigures } from '../../core/facts/label-figures.ts';
import type { Shape, TextShape } from '../drawing/shapes.ts';
import { type TextStyle, textWidthMm } from '../drawing/text-width.ts';
import { wrapText } from '../drawing/wrap-text.ts';
import { keepUnits } from '../lists/print-figure.ts';
import type { CableLabel } from './cable-labels.ts';
import { codePath, type LabelCode, labelCode } from './label-code.ts';

/** Room for one label: what may be printed on, and the white that is left round it before the label ends. */
export interface LabelRoom {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marginXMm: number;
  readonly marginYMm: number;
}

/** A label as it is printed, its shapes from the upper left corner of its room. */
export interface SetLabel {
  readonly shapes: readonly Shape[];
  readonly hasCode: boolean;
  /** whether the id has room at all */
  readonly fits: boolean;
  /** whether all there is to say has room, in however few words */
  readonly saysAll: boolean;
}

/** Height of a capital as a share of the size of its face: B612 Mono and Source Sans 3, from the files. */
const capitals = { figures: 0.75, words: 0.66 } as const;

/** What letters reach above and below their line, as a share of the size. */
const reach = { above: 0.76, below: 0.22 } as const;

const idStyle = (capitalMm: number): TextStyle => ({ face: 'figures', sizeMm: capitalMm / capitals.figures });

const smallStyle: TextStyle = {
  face: 'words',
  weight: 'semibold',
  sizeMm: labelFigures.smallType.value / capitals.words,
};

const smallMm = smallStyle.sizeMm * (reach.above + reach.below);

/** Least white between the id and what stands under it, and between a text and its code. */
const gaps = { underIdMm: 0.4, underIdMostMm: 1.4, betweenMm: 0.3 } as const;

/** From one small line to the next. */
const pitchMm = smallMm + gaps.betweenMm;

/** Least room for words beside a code. */
const wordsMm = 12;

/** How high the id is and how many lines stand under it. */
const rowsIn = (heightMm: number, capitalMm: number): number => {
  const leftMm = heightMm - (capitalMm / capitals.figures) * reach.above - gaps.underIdMm;
  return Math.max(0, Math.floor((leftMm + gaps.betweenMm) / (smallMm + gaps.betweenMm) + 1e-9));
};

const withFar = (parts: readonly string[], far: readonly string[]): string[] => [
  ...far.map((words) => [...parts, words].join(', ')),
  ...(parts.length === 0 ? [] : [parts.join(', ')]),
];

const present = (...texts: readonly (string | undefined)[]): string[] => texts.flatMap((text) => text ?? []);

/**
 * The lines under the id where there is room for so many: each as the texts that could stand there, the fullest first. With
 * little room the half of a parted cable comes before its fuse, the fuse before the far end, and the date last.
 */
export const linesUnder = ({ far, half, fuse, dateIso }: CableLabel, rows: number): (readonly string[])[] => {
  const farLine = far.length === 0 ? [] : [far];
  const all = [...present(half).map((one) => [one]), ...farLine, ...present(fuse, dateIso).map((one) => [one])];
  if (rows >= all.length) return all;
  if (rows <= 0) return [];
  if (rows === 1) return [withFar(present(half, fuse), far)];
  const last = present(fuse, dateIso);
  const short = [last.join(', '), ...last.slice(0, 1)];
  if (half === undefined) return [...farLine, short];
  return rows === 2 ? [withFar([half], far), short] : [[half], ...farLine, short];
};

/** The code as large as the room takes it; absent where its squares would be too small to be read. */
const codeIn = (
  code: LabelCode,
  { room, besideMm }: { room: LabelRoom; besideMm: number },
): { readonly squareMm: number; readonly leftMm: number; readonly topMm: number } | undefined => {
  const { codeQuiet, codeSquareLeast, codeSquareMost } = labelFigures;
  const quiet = codeQuiet.value;
  const whole = code.squares + 2 * quiet;
  const highMm = Math.min(room.heightMm / code.squares, (room.heightMm + 2 * room.marginYMm) / whole);
  const squareMm = Math.min(codeSquareMost.value, highMm);
  if (squareMm < codeSquareLeast.value) return undefined;
  for (const tried of [squareMm, codeSquareLeast.value]) {
    const rightMm = room.widthMm - Math.max(0, quiet * tried - room.marginXMm);
    const leftMm = rightMm - code.squares * tried;
    const topMm = (room.heightMm - code.squares * tried) / 2;
    if (leftMm - quiet * tried >= besideMm) return { squareMm: tried, leftMm, topMm };
  }
  return undefined;
};

const textAt = (text: string, style: TextStyle, yMm: number): TextShape => ({
  kind: 'text',
  xMm: 0,
  yMm,
  text,
  sizeMm: style.sizeMm,
  face: style.face,
  ...(style.weight === undefined ? {} : { weight: style.weight }),
  ink: 'ink',
});

/** The first of the texts that has room on one line. */
const fitting = (texts: readonly string[], widthMm: number): string | undefined =>
  texts.find((text) => text !== '' && textWidthMm(text, smallStyle) <= widthMm);

/** Lines a text may take where there is room under the id. */
const linesMost = 2;

/**
 * What stands under the id, line by line: of each text the fullest wording that has room, over two lines where there are any to
 * spare. `texts` counts those that are said.
 */
const saidIn = ({ under, rows }: Setting, widthMm: number): { readonly lines: string[]; readonly texts: number } => {
  const lines: string[] = [];
  let spare = rows - under.length;
  let texts = 0;
  for (const wordings of under) {
    const most = Math.min(linesMost, 1 + Math.max(0, spare));
    const set = wordings
      .filter((text) => text !== '')
      // a figure stays on one line with its unit
      .map((text) => wrapText(keepUnits(text), smallStyle, widthMm)?.map((line) => line.replaceAll('\u00A0', ' ')))
      .find((own) => own !== undefined && own.length <= most);
    if (set === undefined) continue;
    spare -= set.length - 1;
    texts += 1;
    lines.push(...set);
  }
  return { lines, texts };
};

/** How a label is set in a room of some height, before it is known how wide it is. */
interface Setting {
  readonly style: TextStyle;
  /** the lines under the id, each as the texts that could stand there */
  readonly under: readonly (readonly string[])[];
  /** lines there is room for */
  readonly rows: number;
  readonly code: LabelCode;
}

const settingOf = (label: CableLabel, heightMm: number): Setting => {
  const { typeLeast, typeMost } = labelFigures;
  const wanted = present(label.half, label.far[0], label.fuse, label.dateIso).length;
  const capitalMm = rowsIn(heightMm, typeMost.value) >= wanted ? typeMost.value : typeLeast.value;
  const rows = rowsIn(heightMm, capitalMm);
  return {
    style: idStyle(capitalMm),
    rows,
    under: linesUnder(label, rows),
    code: labelCode(label.code),
  };
};

/** The id and the lines under it, together in the middle of their height, with more white under the id where there is room. */
const textShapes = (
  id: string,
  { style, said, heightMm }: { style: TextStyle; said: readonly string[]; heightMm: number },
): TextShape[] => {
  const idMm = style.sizeMm * reach.above;
  const linesMm = Math.max(0, said.length * pitchMm - gaps.betweenMm);
  const spareMm = Math.max(0, heightMm - idMm - linesMm);
  const gapMm = said.length === 0 ? 0 : Math.min(gaps.underIdMostMm, Math.max(gaps.underIdMm, spareMm / 3));
  const firstMm = Math.max(0, spareMm - gapMm) / 2 + idMm;
  const underMm = firstMm + gapMm + smallStyle.sizeMm * reach.above;
  return [textAt(id, style, firstMm), ...said.map((text, at) => textAt(text, smallStyle, underMm + at * pitchMm))];
};

/** What no label should be without: the half of a parted cable, and the fuse of a feed. */
const isSaid = ({ half, fuse }: CableLabel, said: string): boolean =>
  present(half, fuse).every((text) => said.includes(text));

/**
 * Sets one label in its room: the id with capitals of 3 to 4 mm, under it the far end, the fuse and the day with capitals of
 * 2 mm, beside them the code. No text is cut: of each line the fullest wording that has room is taken, and a line that has none
 * is left out. The id is never shortened.
 */
export const setLabel = (label: CableLabel, room: LabelRoom): SetLabel => {
  const setting = settingOf(label, room.heightMm);
  const { style, under, code } = setting;
  const idMm = textWidthMm(label.id, style);
  const found = codeIn(code, { room, besideMm: Math.max(idMm, wordsMm) });
  const besideMm = found === undefined ? 0 : found.leftMm - labelFigures.codeQuiet.value * found.squareMm;
  // words come before the code: where it would take the room of a whole line it is left out
  const place = saidIn(setting, besideMm).texts < saidIn(setting, room.widthMm).texts ? undefined : found;
  const { lines: said, texts } = saidIn(setting, place === undefined ? room.widthMm : besideMm);
  const codeShapes: Shape[] = place === undefined ? [] : [{ kind: 'path', d: codePath(code, place), fill: 'ink' }];
  return {
    shapes: [...textShapes(label.id, { style, said, heightMm: room.heightMm }), ...codeShapes],
    hasCode: place !== undefined,
    fits: idMm <= room.widthMm && style.sizeMm * reach.above <= room.heightMm,
    saysAll: texts === under.length && isSaid(label, said.join(' ')),
  };
};

/** The widest a text is set on a tape, which has no end of its own. */
const longestTextMm = 60;

/** How wide the room of a label is that may be as wide as what stands on it, on a tape: all its words, and its code. */
export const widthWanted = (label: CableLabel, room: Omit<LabelRoom, 'widthMm'>): number => {
  const { style, under, code } = settingOf(label, room.heightMm);
  const lines = under.map((texts) => textWidthMm(fitting(texts, longestTextMm) ?? '', smallStyle));
  const textMm = Math.max(textWidthMm(label.id, style), ...lines);
  const wide = { ...room, widthMm: 1000 };
  const squareMm = codeIn(code, { room: wide, besideMm: 0 })?.squareMm;
  if (squareMm === undefined) return textMm + roundingMm;
  const quietMm = labelFigures.codeQuiet.value * squareMm;
  const rightMm = Math.max(0, quietMm - room.marginXMm);
  return Math.max(textMm, wordsMm) + quietMm + code.squares * squareMm + rightMm + roundingMm;
};

/** So that a room made to measure is not a hair too narrow. */
const roundingMm = 0.01;
