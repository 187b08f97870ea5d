import type { Block, Chapter } from '../binder/binder-shape.ts';
import { aboutOf } from './about-of.ts';
import { placeDrawing, wantsTurned } from './drawing-on-page.ts';
import { type ChapterPages, type PageFlow, startFlow } from './page-flow.ts';
import { type PaperName, pageArea, roomOf } from './paper-sizes.ts';
import type { Piece } from './piece.ts';
import { kindOf, kindsOf, readsWell, type SetColumn } from './table-columns.ts';
import { tablePieces } from './table-pieces.ts';
import { blockPieces, headingPieces } from './word-pieces.ts';

/** What stands together on pages turned the same way: a heading and all up to the next. */
interface Group {
  readonly blocks: readonly Block[];
  /** begins a new page */
  readonly isNewPage: boolean;
}

const groupsOf = (blocks: readonly Block[]): Group[] => {
  const groups: { blocks: Block[]; isNewPage: boolean }[] = [{ blocks: [], isNewPage: false }];
  let isStart = true;
  for (const block of blocks) {
    const isTitled = block.kind === 'table' && block.table.title !== '';
    const last = groups.at(-1);
    const isAfterLead =
      last?.blocks.every(({ kind }) => kind === 'heading' || kind === 'words' || kind === 'points') === true;
    if (block.kind === 'page') groups.push({ blocks: [], isNewPage: true });
    else if (!isStart && (block.kind === 'heading' || (isTitled && !isAfterLead)))
      groups.push({ blocks: [block], isNewPage: false });
    else last?.blocks.push(block);
    isStart = block.kind === 'page';
  }
  return groups.filter((group) => group.blocks.length > 0 || group.isNewPage);
};

/** What all groups of a chapter are set by. */
interface Setting {
  readonly chapter: Chapter;
  readonly paper: PaperName;
  readonly kinds: ReadonlyMap<string, readonly SetColumn[]>;
}

/** A table is turned where upright its words would stand one under the other, and with it all of its kind. */
const isTurned = ({ blocks }: Group, { paper, kinds }: Setting): boolean =>
  blocks.some((block) => {
    if (block.kind === 'drawing') return wantsTurned(block);
    if (block.kind !== 'table') return false;
    return !readsWell(kinds.get(kindOf(block.table)) ?? [], roomOf(pageArea(paper, false)).widthMm);
  });

/** Pieces that stand on one page. */
const kept = (pieces: readonly Piece[]): Piece[] =>
  pieces.map((piece, at) => (at === pieces.length - 1 ? piece : { ...piece, isChained: true }));

const piecesOf = (
  blocks: readonly Block[],
  room: { widthMm: number; heightMm: number },
  { chapter, kinds }: Setting,
): Piece[] => {
  let lastHeading = chapter.title;
  return blocks.flatMap((block) => {
    if (block.kind === 'drawing' || block.kind === 'page') return [];
    if (block.kind === 'table') {
      const pieces = tablePieces(block.table, room, { kind: kinds.get(kindOf(block.table)) ?? [], lastHeading });
      return block.isWhole === true ? kept(pieces) : pieces;
    }
    if (block.kind === 'heading') lastHeading = block.text;
    return blockPieces(block, room.widthMm);
  });
};

const heightOf = (pieces: readonly Piece[]): number =>
  pieces.reduce((sum, { heightMm, gapMm }) => sum + heightMm + gapMm, 0);

/** A group with a drawing: what stands before the drawing is set above it, what follows below. */
const placeDrawn = (flow: PageFlow, blocks: readonly Block[], lead: readonly Piece[], setting: Setting): void => {
  let waiting: readonly Piece[] = lead;
  let words: Block[] = [];
  const piecesHere = (): Piece[] => {
    const pieces = [...waiting, ...piecesOf(words, roomOf(flow.page().area), setting)];
    waiting = [];
    words = [];
    return pieces;
  };
  for (const block of blocks) {
    if (block.kind === 'drawing') placeDrawing(flow, block, piecesHere(), block.about ?? aboutOf(block.drawing.shapes));
    else words.push(block);
  }
  flow.place(piecesHere());
};

const placeGroup = (flow: PageFlow, group: Group, setting: Setting, isFirst: boolean): void => {
  const turned = isTurned(group, setting);
  const titled = (): Piece[] =>
    isFirst ? headingPieces(setting.chapter.title, roomOf(flow.page().area).widthMm, { level: 0 }) : [];
  if (group.isNewPage) flow.turnTo(turned, true);
  if (group.blocks.some(({ kind }) => kind === 'drawing')) {
    flow.turnTo(turned);
    placeDrawn(flow, group.blocks, titled(), setting);
    return;
  }
  const onOpen = piecesOf(group.blocks, roomOf(flow.page().area), setting);
  const stays = flow.page().area.isTurned === turned || (!turned && heightOf(onOpen) <= flow.leftMm());
  if (!stays) flow.turnTo(turned);
  flow.place([...titled(), ...(stays ? onOpen : piecesOf(group.blocks, roomOf(flow.page().area), setting))]);
};

/** A chapter set in pages of a paper. */
export const chapterPages = (chapter: Chapter, paper: PaperName): ChapterPages => {
  const groups = groupsOf(chapter.blocks);
  const tables = chapter.blocks.flatMap((block) => (block.kind === 'table' ? [block.table] : []));
  const setting = { chapter, paper, kinds: kindsOf(tables) };
  const flow = startFlow(paper, groups[0] !== undefined && isTurned(groups[0], setting));
  for (const [at, group] of groups.entries()) placeGroup(flow, group, setting, at === 0);
  return flow;
};
