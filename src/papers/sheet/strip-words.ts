import { textWidthMm } from '../drawing/text-width.ts';
import { wrapText } from '../drawing/wrap-text.ts';
import { figureIn, type SheetUnits } from './sheet-units.ts';
import type { StripNode } from './strip-nodes.ts';

/** Type sizes of the strip: figures and words of a little over 11 px on screen. */
export const stripFigures = { sizeMm: 2.95, face: 'figures' } as const;
export const stripWords = { sizeMm: 3.05, face: 'words' } as const;
export const stripLineMm = 3.4;

/** A node that knows where it stands and to which side of the trunk it hangs. */
export interface StandingNode extends StripNode {
  readonly xMm: number;
  readonly up: boolean;
}

/** What is written at a node: its words, a line each, and the length of its drop. */
export interface NodeWords {
  readonly words: readonly string[];
  readonly dropText: string | undefined;
}

/** Half the room that the volts and amperes over a feed take. */
const feedHalfMm = 5.85;
const airMm = 0.6;

/** The word under a spare tee stands clear of the drop lengths beside it when its neighbours are this far. */
const spareRoomMm = 10.9;

/** The figure of a drop stands to the right of its line. */
const dropIndentMm = 0.8;

/** How wide the words of a node may be: halfway to its neighbours on the same side, clear of a feed's figures. */
const roomMm = (node: StandingNode, same: readonly StandingNode[], sheetMm: number): number => {
  const rooms = same.map((other) => {
    const apartMm = Math.abs(other.xMm - node.xMm);
    return other.kind === 'feed' ? 2 * (apartMm - feedHalfMm - airMm) : apartMm - 2 * airMm;
  });
  return Math.min(2 * (node.xMm - 2), 2 * (sheetMm - 2 - node.xMm), ...rooms);
};

const deviceWords = (node: StandingNode, same: readonly StandingNode[], sheetMm: number): string[] => {
  if (node.mark === undefined) return [];
  const lines = wrapText(node.mark.label, stripWords, roomMm(node, same, sheetMm));
  return lines === undefined || lines.length > 2 ? [] : lines;
};

const dropText = (node: StandingNode, same: readonly StandingNode[], units: SheetUnits): string | undefined => {
  const text = node.drop === undefined ? undefined : figureIn(units, node.drop.lengthM);
  if (text === undefined) return undefined;
  const wideMm = dropIndentMm + textWidthMm(text, stripFigures) + airMm;
  const nextMm = same.filter((other) => other.xMm > node.xMm).map((other) => other.xMm - node.xMm);
  return Math.min(...nextMm) < wideMm ? undefined : text;
};

/** The words of one node as far as they fit, in at most two lines; words are never cut, they are left out. */
export const nodeWords = (
  node: StandingNode,
  nodes: readonly StandingNode[],
  { sheetMm, units }: { sheetMm: number; units: SheetUnits },
): NodeWords => {
  const same = nodes.filter((other) => other !== node && other.up === node.up && other.kind !== 'end');
  switch (node.kind) {
    case 'device':
      return { words: deviceWords(node, same, sheetMm), dropText: dropText(node, same, units) };
    case 'spare': {
      const isClear = same.every((other) => Math.abs(other.xMm - node.xMm) >= spareRoomMm);
      return { words: isClear ? ['spare'] : [], dropText: undefined };
    }
    default:
      return { words: [], dropText: undefined };
  }
};
