import type { Block, Chapter } from '../binder/binder-shape.ts';
import { aboutOf } from './about-of.ts';
import { placeDrawing, wantsTurned } from './drawing-on-page.ts';
import { type ChapterPages, type PageFlow, startFlow } from './page-flow.ts';
import { type PaperName, pageArea, roomOf } from './paper-sizes.ts';
import type { Piece } from './piece.ts';
import { readsWell, setColumns } from './table-columns.ts';
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
    const isAfterLead = last?.blocks.every(({ kind }) => kind === 'heading' || kind === 'words') === true;
    if (block.kind === 'page') groups.push({ blocks: [], isNewPage: true });
    else if (!isStart && (block.kind === 'heading' || (isTitled && !isAfterLead)))
      groups.push({ blocks: [block], isNewPage: false });
    else last?.blocks.push(block);
    isStart = block.kind === 'page';
  }
  return groups.filter((group) => group.blocks.length > 0 || group.isNewPage);
};

/** A table is turned where upright its words would stand one under the other. */
const isTurned = ({ blocks }: Group, paper: PaperName): boolean =>
  blocks.some((block) => {
    if (block.kind === 'drawing') return wantsTurned(block.drawing);
    if (block.kind !== 'table' || block.table.rows.length === 0) return false;
    return !readsWell(setColumns(block.table), roomOf(pageArea(paper, false)).widthMm);
  });

const piecesOf = (blocks: readonly Block[], room: { widthMm: number; heightMm: number }, title: string): Piece[] => {
  let heading = title;
  return blocks.flatMap((block) => {
    if (block.kind === 'drawing' || block.kind === 'page') return [];
    if (block.kind === 'table') return tablePieces(block.table, room, heading);
    if (block.kind === 'heading') heading = block.text;
    return blockPieces(block, room.widthMm);
  });
};

const heightOf = (pieces: readonly Piece[]): number =>
  pieces.reduce((sum, { heightMm, gapMm }) => sum + heightMm + gapMm, 0);

/** A group with a drawing: what stands before the drawing is set above it, what follows below. */
const placeDrawn = (flow: PageFlow, blocks: readonly Block[], title: string, lead: readonly Piece[]): void => {
  let waiting: Piece[] = [...lead];
  let words: Block[] = [];
  const piecesHere = (turned: boolean): Piece[] => {
    const { area } = flow.page();
    const room = roomOf(area.isTurned === turned ? area : { ...area });
    const pieces = piecesOf(words, room, title);
    words = [];
    return pieces;
  };
  for (const block of blocks) {
    if (block.kind === 'drawing') {
      const pieces = piecesHere(wantsTurned(block.drawing));
      placeDrawing(flow, block.drawing, [...waiting, ...pieces], block.about ?? aboutOf(block.drawing.shapes));
      waiting = [];
    } else words.push(block);
  }
  flow.place([...waiting, ...piecesHere(flow.page().area.isTurned)]);
};

const placeGroup = (flow: PageFlow, group: Group, chapter: Chapter, paper: PaperName, isFirst: boolean): void => {
  const turned = isTurned(group, paper);
  if (group.isNewPage) flow.turnTo(turned, true);
  const hasDrawing = group.blocks.some(({ kind }) => kind === 'drawing');
  const titled = (widthMm: number): Piece[] => (isFirst ? headingPieces(chapter.title, widthMm, { level: 0 }) : []);
  if (hasDrawing) {
    flow.turnTo(turned);
    placeDrawn(flow, group.blocks, chapter.title, titled(roomOf(flow.page().area).widthMm));
    return;
  }
  const onOpen = piecesOf(group.blocks, roomOf(flow.page().area), chapter.title);
  const stays = flow.page().area.isTurned === turned || (!turned && heightOf(onOpen) <= flow.leftMm());
  const { area } = stays ? flow.page() : flow.turnTo(turned);
  const room = roomOf(area);
  flow.place([...titled(room.widthMm), ...piecesOf(group.blocks, room, chapter.title)]);
};

/** A chapter set in pages of a paper. */
export const chapterPages = (chapter: Chapter, paper: PaperName): ChapterPages => {
  const groups = groupsOf(chapter.blocks);
  const flow = startFlow(paper, groups[0] !== undefined && isTurned(groups[0], paper));
  for (const [at, group] of groups.entries()) placeGroup(flow, group, chapter, paper, at === 0);
  return flow;
};
