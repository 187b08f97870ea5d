import type { Place } from '../../../core/boat/boat-schema.ts';
import { pathShape } from '../../drawing/marks.ts';
import { polyline } from '../../drawing/polyline.ts';
import type { Shape } from '../../drawing/shapes.ts';
import { placeBadge } from '../boat/window-notes.ts';
import type { SheetContent } from '../framed-sheet.ts';
import type { KnownBoat } from '../known-boat.ts';
import { fewLines, sheetText } from '../sheet-text.ts';
import { type FlowPart, textFlow } from '../text-flow.ts';
import { boxesOf, type Entry, entriesOf, type PlaceBox, type TrunkPass, trunkPasses } from './place-facts.ts';
import { placePicture } from './place-picture.ts';
import type { PictureRoom } from './place-text.ts';
import { placeWords } from './place-words.ts';

/** Everything there is to show of one place. */
interface PlaceDetail {
  readonly place: Place;
  readonly entries: readonly Entry[];
  readonly boxes: readonly PlaceBox[];
  readonly passes: readonly TrunkPass[];
  readonly words: readonly FlowPart[];
}

const detailOf = (known: KnownBoat, place: Place): PlaceDetail => {
  const entries = entriesOf(known, place);
  const boxes = boxesOf(known, place);
  return {
    place,
    entries,
    boxes,
    passes: trunkPasses(known, place),
    words: placeWords(known, place, { boxes, entries }),
  };
};

const reachWords: Readonly<Record<Place['reach'], string>> = {
  open: 'open to the hand',
  panel: 'behind a panel',
  hard: 'hard to reach',
  aloft: 'aloft',
};

const headMm = 6.4;
/** Share of a cell that the picture takes: more where the cell is small. */
const shareOf = (widthMm: number): number => (widthMm < 160 ? 0.64 : 0.58);

const headShapes = (known: KnownBoat, { place }: PlaceDetail, room: PictureRoom): Shape[] => {
  const badge = placeBadge(known, place.id, [room.leftMm, room.topMm]);
  const leftMm = room.leftMm + badge.widthMm + 1.6;
  const title = `${place.name} (${place.exposure}, ${reachWords[place.reach]})`;
  const [line = ''] = fewLines(title, sheetText.name, { widthMm: room.leftMm + room.widthMm - leftMm, most: 1 });
  return [
    ...badge.shapes,
    { kind: 'text', xMm: leftMm, yMm: room.topMm + 3, text: line, ...sheetText.name, ink: 'ink', about: [place.id] },
  ];
};

/** A place in a cell of a sheet; several cells where it is too much for one. */
const cellsOf = (known: KnownBoat, detail: PlaceDetail, room: PictureRoom): { cells: Shape[][]; isOver: boolean } => {
  const cells: Shape[][] = [];
  const pictureMm = room.widthMm * shareOf(room.widthMm);
  const topMm = room.topMm + headMm;
  const heightMm = room.heightMm - headMm;
  const words = textFlow(detail.words, {
    leftMm: room.leftMm + pictureMm + 4,
    topMm,
    widthMm: room.widthMm - pictureMm - 4,
    heightMm,
    columns: 1,
  });
  let { boxes, passes } = detail;
  let isOver = false;
  for (let at = 0; at === 0 || boxes.length + passes.length > 0 || at < words.length; at++) {
    const before = boxes.length + passes.length;
    const picture =
      at === 0 || before > 0
        ? placePicture(
            known,
            detail.place,
            { entries: detail.entries, boxes, passes },
            { leftMm: room.leftMm, topMm, widthMm: pictureMm, heightMm },
          )
        : undefined;
    cells.push([...headShapes(known, detail, room), ...(picture?.shapes ?? []), ...(words[at] ?? [])]);
    isOver ||= picture?.isOver === true;
    boxes = picture?.rest ?? [];
    passes = picture?.restPasses ?? [];
    // what is too high for any sheet would come back for ever
    if (at > 0 && before > 0 && boxes.length + passes.length === before) {
      isOver = true;
      break;
    }
  }
  return { cells, isOver };
};

/** Parts a sheet may be shared in: how many cells across and down. */
const grids = [
  { across: 2, down: 2 },
  { across: 1, down: 2 },
  { across: 1, down: 1 },
] as const;

type Grid = (typeof grids)[number];

const gapMm = 5;

const cellRoom = (known: KnownBoat, { across, down }: Grid, at: number): PictureRoom => {
  const { widthMm, heightMm } = known.area.content;
  const ownMm = {
    widthMm: (widthMm - 2 - gapMm * (across - 1)) / across,
    heightMm: (heightMm - gapMm * (down - 1)) / down,
  };
  return {
    leftMm: 1 + (at % across) * (ownMm.widthMm + gapMm),
    topMm: Math.floor(at / across) * (ownMm.heightMm + gapMm),
    ...ownMm,
  };
};

/** Hair lines between the cells of a sheet. */
const rules = (known: KnownBoat, { across, down }: Grid): Shape[] => {
  const { widthMm, heightMm } = known.area.content;
  const rule = (from: readonly [number, number], to: readonly [number, number]): Shape =>
    pathShape(polyline([from, to]), { stroke: { ink: 'quiet', widthMm: 0.15 } });
  return [
    ...(across === 2 ? [rule([widthMm / 2, 0], [widthMm / 2, heightMm])] : []),
    ...(down === 2 ? [rule([0, heightMm / 2], [widthMm, heightMm / 2])] : []),
  ];
};

/** The smallest part of a sheet in which a place finds room. */
const gridFor = (known: KnownBoat, detail: PlaceDetail): Grid =>
  grids.find((grid) => {
    const { cells, isOver } = cellsOf(known, detail, cellRoom(known, grid, 0));
    return cells.length === 1 && !isOver;
  }) ?? grids[2];

const codeList = (known: KnownBoat, details: readonly PlaceDetail[]): string =>
  details.map(({ place }) => known.codes.get(place.id) ?? place.name).join(', ');

const aboutOf = ({ place, boxes }: PlaceDetail): string[] => [place.id, ...boxes.flatMap(({ about }) => about)];

const sharedSheet = (known: KnownBoat, grid: Grid, details: readonly PlaceDetail[]): SheetContent => ({
  title: `${details.length === 1 ? 'place' : 'places'} ${codeList(known, details)} in detail`,
  about: details.flatMap(aboutOf),
  isAlong: true,
  shapes: [
    ...rules(known, grid),
    ...details.flatMap((detail, at) => cellsOf(known, detail, cellRoom(known, grid, at)).cells[0] ?? []),
  ],
});

const ownSheets = (known: KnownBoat, detail: PlaceDetail): SheetContent[] => {
  const { cells } = cellsOf(known, detail, cellRoom(known, grids[2], 0));
  return cells.map((shapes, at) => ({
    title: `place ${codeList(known, [detail])} in detail: ${detail.place.name}${cells.length === 1 ? '' : `, part ${at + 1} of ${cells.length}`}`,
    about: aboutOf(detail),
    isAlong: true,
    shapes,
  }));
};

const chunks = <One>(list: readonly One[], size: number): One[][] =>
  Array.from({ length: Math.ceil(list.length / size) }, (_, at) => list.slice(at * size, (at + 1) * size));

interface Sized {
  readonly detail: PlaceDetail;
  readonly grid: Grid;
}

/** A place that would have a sheet of quarters for itself takes the free half of a sheet of halves, where there is one. */
const withoutLoneQuarter = (sized: readonly Sized[]): Sized[] => {
  const [quarter, half] = grids;
  const quarters = sized.filter(({ grid }) => grid === quarter);
  const halves = sized.filter(({ grid }) => grid === half);
  const lone = quarters.length % 4 === 1 && halves.length % 2 === 1 ? quarters.at(-1) : undefined;
  return sized.map((one) => (one === lone ? { ...one, grid: half } : one));
};

/**
 * A picture of every place where a unit or a joint stands, with the ways as they come in, what is plugged in where, tees in their
 * order and the cautions that belong there. Small places share a sheet.
 */
export const placeSheets = (known: KnownBoat): SheetContent[] => {
  const details = [...known.codes.keys()]
    .flatMap((id) => known.index.places.get(id) ?? [])
    .map((place) => detailOf(known, place))
    .filter(({ boxes, passes }) => boxes.length > 0 || passes.some(({ joints }) => joints.length > 0));
  const sized = withoutLoneQuarter(details.map((detail) => ({ detail, grid: gridFor(known, detail) })));
  return grids.flatMap((grid) => {
    const own = sized.filter((one) => one.grid === grid).map(({ detail }) => detail);
    if (grid === grids[2]) return own.flatMap((detail) => ownSheets(known, detail));
    return chunks(own, grid.across * grid.down).map((some) => sharedSheet(known, grid, some));
  });
};
