import { spread } from '../sheet/spread.ts';
import type { Outline } from './lane-rows.ts';

/** What stands on a lane from left to right: a unit with its outline, or a mark on the line alone. */
export interface LaneItem {
  readonly outline?: Outline;
  /** it hangs below, with nothing under it: a line leads on down from it */
  readonly tie?: boolean;
  /** where it would stand along the boat */
  readonly wishMm: number;
}

/** Neighbours on one side of a lane whose outlines stand under one another, the leftmost farthest out. */
interface Column {
  readonly items: readonly number[];
  readonly side: 'up' | 'down' | 'none';
  readonly stemsMm: number;
  readonly widthMm: number;
  readonly wishMm: number;
}

/** An item where it was set down: its x, its side, and how many rows lie between the line and its own. */
export interface SetItem {
  readonly xMm: number;
  readonly sign: 1 | -1;
  readonly rowsBefore: number;
}

export interface LaneShape {
  /** from one stem to the next */
  readonly pitchMm: number;
  /** on both sides of the line, or below it only */
  readonly sides: 'both' | 'below';
}

const betweenMm = 3;

const rowsOf = (item: LaneItem | undefined): number => item?.outline?.rows.length ?? 0;

const columnsOf = (items: readonly LaneItem[], most: number, { pitchMm, sides }: LaneShape): Column[] => {
  const groups: number[][] = [];
  for (const [at, item] of items.entries()) {
    const last = groups.at(-1);
    const before = items[last?.at(-1) ?? -1];
    const joins = item.outline !== undefined && item.tie !== true && before?.outline !== undefined && !before.tie;
    if (joins && last !== undefined && last.length < most) last.push(at);
    else groups.push([at]);
  }
  let side: 'up' | 'down' = 'down';
  return groups.map((group): Column => {
    const own = group.flatMap((at) => items[at] ?? []);
    const isUnit = own[0]?.outline !== undefined;
    if (isUnit) side = own[0]?.tie === true || sides === 'below' || side === 'up' ? 'down' : 'up';
    return {
      items: group,
      side: isUnit ? side : 'none',
      stemsMm: (group.length - 1) * pitchMm,
      widthMm: Math.max(0, ...own.map((item, at) => at * pitchMm + (item.outline?.widthMm ?? 0))),
      wishMm: own.reduce((sum, item) => sum + item.wishMm, 0) / own.length - ((group.length - 1) * pitchMm) / 2,
    };
  });
};

/** Least distances between the starts of columns: stems clear of each other, words clear of the next on their side. */
const gapsOf = (columns: readonly Column[]): number[] => {
  const gaps: number[] = [];
  for (const [at, column] of columns.entries()) {
    const before = columns[at - 1];
    let gapMm = before === undefined ? 0 : before.stemsMm + 3.8;
    const same = columns.slice(0, at).findLastIndex(({ side }) => side === column.side && side !== 'none');
    const last = columns[same];
    if (last !== undefined) {
      const between = gaps.slice(same + 1).reduce((sum, gap) => sum + gap, 0);
      gapMm = Math.max(gapMm, last.widthMm + betweenMm + 2.6 - between);
    }
    gaps.push(gapMm);
  }
  return gaps;
};

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** From the start of the last column to the end of the words that reach farthest. */
const tailMm = (columns: readonly Column[], gaps: readonly number[]): number =>
  Math.max(0, ...columns.map(({ widthMm }, at) => widthMm - sum(gaps.slice(at + 1))));

/** The most units in a column of a sheet as wide as it must be; a narrower one has more, and is deeper. */
const roomyMost = 4;

/** The least room a lane needs, from its first stem to the end of its words. */
export const leastLaneMm = (items: readonly LaneItem[], shape: LaneShape): number => {
  const columns = columnsOf(items, roomyMost, shape);
  const gaps = gapsOf(columns);
  return sum(gaps) + tailMm(columns, gaps);
};

/** Sets the items of a lane in their order, as near to their places along the boat as their words allow. */
export const setLane = (
  items: readonly LaneItem[],
  room: { readonly fromMm: number; readonly toMm: number },
  shape: LaneShape,
): SetItem[] => {
  const choices = Array.from({ length: roomyMost }, (_, at) => columnsOf(items, at + 1, shape));
  const fits = (columns: readonly Column[]): boolean => {
    const gaps = gapsOf(columns);
    return sum(gaps) + tailMm(columns, gaps) <= room.toMm - room.fromMm + 0.001;
  };
  const columns = choices.find(fits) ?? choices.at(-1) ?? [];
  const gaps = gapsOf(columns);
  const starts = spread(
    columns.map(({ wishMm }, at) => ({ wishMm, gapMm: gaps[at] ?? 0 })),
    { fromMm: room.fromMm, toMm: room.toMm - tailMm(columns, gaps) },
  );
  return columns.flatMap((column, order) =>
    column.items.map(
      (_, at): SetItem => ({
        xMm: (starts[order] ?? 0) + at * shape.pitchMm,
        sign: column.side === 'up' ? -1 : 1,
        rowsBefore: sum(column.items.slice(at + 1).map((later) => rowsOf(items[later]))),
      }),
    ),
  );
};
