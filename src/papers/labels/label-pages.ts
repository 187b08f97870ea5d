import type { Shape } from '../drawing/shapes.ts';
import type { Inset, Page } from '../pages/page-shape.ts';
import { paperSizes } from '../pages/paper-sizes.ts';
import { lineShapes } from '../pages/piece.ts';
import { typeStyles } from '../pages/type-styles.ts';
import type { CableLabel } from './cable-labels.ts';
import { flatRuler, flatRulerMm } from './flat-ruler.ts';
import { type LabelRoom, type SetLabel, setLabel, widthWanted } from './label-content.ts';
import { geometryWords, type LabelSheet, type LabelTape } from './label-geometry.ts';

/** A label with how it came out in its geometry. */
export interface PlacedLabel {
  readonly label: CableLabel;
  readonly set: SetLabel;
  /** its length round the cable, mm */
  readonly roundMm: number;
}

/** Labels set in pages. */
export interface LabelPages {
  readonly pages: readonly Page[];
  readonly placed: readonly PlacedLabel[];
}

/** White left round what is printed on a label of a sheet: printers draw a sheet in askew by so much. */
const askewMm = 1.5;

/** White before and behind what is printed on a piece of tape, so that a cut takes nothing. */
const cutMm = 2;

/** Kept clear of the edge of the paper, which printers do not reach. */
const edgeMm = 5;

/** The room of every label of a sheet, and how far in from the corner of its label it begins: the same for all, so that all look alike. */
export const sheetRoom = (sheet: LabelSheet): { room: LabelRoom; inXMm: number; inYMm: number } => {
  const { printMm, heightMm, widthMm } = sheet;
  const paper = paperSizes[sheet.paper];
  const last = cellAt(sheet, sheet.columns * sheet.rows - 1);
  const rightMm = paper.widthMm - last.leftMm - widthMm;
  const bottomMm = paper.heightMm - last.topMm - (printMm ?? heightMm);
  const inXMm = Math.max(askewMm, edgeMm - Math.min(sheet.leftMm, rightMm));
  const inYMm = Math.max(askewMm, edgeMm - Math.min(sheet.topMm, bottomMm));
  return {
    room: {
      widthMm: widthMm - 2 * inXMm,
      heightMm: (printMm ?? heightMm) - 2 * inYMm,
      marginXMm: inXMm,
      marginYMm: inYMm,
    },
    inXMm,
    inYMm,
  };
};

/** Where the label `at` of a sheet stands, row after row. */
export const cellAt = (sheet: LabelSheet, at: number): { readonly leftMm: number; readonly topMm: number } => ({
  leftMm: sheet.leftMm + (at % sheet.columns) * (sheet.widthMm + sheet.gapXMm),
  topMm: sheet.topMm + Math.floor(at / sheet.columns) * (sheet.heightMm + sheet.gapYMm),
});

/** The ruler in the lower margin of a sheet, with its number, where there is room. */
const footShapes = (sheet: LabelSheet, { page, of, boat }: { page: number; of: number; boat: string }): Shape[] => {
  const { widthMm, heightMm } = paperSizes[sheet.paper];
  const topMm = cellAt(sheet, sheet.columns * (sheet.rows - 1)).topMm + sheet.heightMm + 0.6;
  if (topMm + flatRulerMm.heightMm > heightMm - edgeMm) return [];
  const leftMm = 12;
  const says = `${boat}, sheet ${page} of ${of}. Print at 100 %.`;
  return [
    ...flatRuler({ leftMm, topMm }),
    ...lineShapes([says], typeStyles.foot, { leftMm, topMm: topMm + 0.6, rightMm: widthMm - leftMm }),
  ];
};

const insetOf = (
  set: SetLabel,
  size: { widthMm: number; heightMm: number },
  corner: { xMm: number; yMm: number },
): Inset => ({
  drawing: { ...size, shapes: set.shapes },
  ...corner,
  scale: 1,
});

/** How a sheet or tape is printed: from which label of the first sheet on, and how often each. */
export interface PrintOrder {
  readonly boat: string;
  /** 1 is the first; the labels before it are gone already */
  readonly startAt?: number;
  readonly copies?: number;
}

const copied = (labels: readonly CableLabel[], copies = 1): CableLabel[] =>
  labels.flatMap((label) => Array.from({ length: copies }, () => label));

/** Labels on sheets: row after row from the first that is left, each in its own. */
export const sheetPages = (labels: readonly CableLabel[], sheet: LabelSheet, order: PrintOrder): LabelPages => {
  const { room, inXMm, inYMm } = sheetRoom(sheet);
  const placed = copied(labels, order.copies).map((label) => ({
    label,
    set: setLabel(label, room),
    roundMm: sheet.printMm === undefined ? Math.max(sheet.widthMm, sheet.heightMm) : sheet.heightMm,
  }));
  const perPage = sheet.columns * sheet.rows;
  const before = Math.min(perPage, Math.max(1, order.startAt ?? 1)) - 1;
  const of = Math.ceil((before + placed.length) / perPage);
  const { widthMm, heightMm } = paperSizes[sheet.paper];
  const pages = Array.from({ length: of }, (_, page): Page => {
    const insets = placed.flatMap(({ set }, at): Inset[] => {
      const slot = before + at - page * perPage;
      if (slot < 0 || slot >= perPage) return [];
      const cell = cellAt(sheet, slot);
      return [insetOf(set, room, { xMm: cell.leftMm + inXMm, yMm: cell.topMm + inYMm })];
    });
    return {
      widthMm,
      heightMm,
      shapes: footShapes(sheet, { page: page + 1, of, boat: order.boat }),
      insets,
      links: [],
    };
  });
  return { pages, placed };
};

const tapeLabel = (label: CableLabel, tape: LabelTape): PlacedLabel & { room: LabelRoom } => {
  const marginYMm = (tape.widthMm - tape.printMm) / 2;
  const open = { heightMm: tape.printMm, marginXMm: cutMm, marginYMm };
  const widthMm = widthWanted(label, open);
  const room = { ...open, widthMm };
  return { label, set: setLabel(label, room), roundMm: Math.max(label.wrapMm, widthMm + 2 * cutMm), room };
};

/** A tick at each edge of the tape where it is cut. */
const cutMark = (xMm: number, { widthMm }: LabelTape): Shape => ({
  kind: 'path',
  d: `M${xMm.toFixed(2)} 0v1M${xMm.toFixed(2)} ${(widthMm - 1).toFixed(2)}v1`,
  stroke: { ink: 'ink', widthMm: 0.15 },
});

/** Labels on tape, a strip a cable: each as long as it takes to go round, or as what stands on it, with marks to cut at. */
export const tapePages = (labels: readonly CableLabel[], tape: LabelTape, order: PrintOrder): LabelPages => {
  const all = copied(labels, order.copies).map((label) => tapeLabel(label, tape));
  const cables = [...new Set(all.map(({ label }) => label.line))];
  const pages = cables.map((cable): Page => {
    const own = all.filter(({ label }) => label.line === cable);
    const starts = own.map((_, at) => own.slice(0, at).reduce((sum, { roundMm }) => sum + roundMm, 0));
    return {
      widthMm: own.reduce((sum, { roundMm }) => sum + roundMm, 0),
      heightMm: tape.widthMm,
      shapes: starts.slice(1).map((xMm) => cutMark(xMm, tape)),
      insets: own.map(({ set, room, roundMm }, at) =>
        insetOf(set, room, { xMm: (starts[at] ?? 0) + (roundMm - room.widthMm) / 2, yMm: room.marginYMm }),
      ),
      links: [],
    };
  });
  return { pages, placed: all };
};

/** Labels in pages of whichever geometry. */
export const labelPages = (
  labels: readonly CableLabel[],
  geometry: LabelSheet | LabelTape,
  order: PrintOrder,
): LabelPages => ('rows' in geometry ? sheetPages(labels, geometry, order) : tapePages(labels, geometry, order));

/** The title of the pages. */
export const labelTitle = (boat: string, geometry: LabelSheet | LabelTape): string =>
  `${boat}: cable labels, ${geometryWords(geometry)}`;
