import { type PaperName, paperSizes } from '../pages/paper-sizes.ts';

/** Kept free round a tile for the rulers, the title, and what printers do not reach. */
export const tileEdges = { leftMm: 14, rightMm: 8, topMm: 20, bottomMm: 14 } as const;

/** Tiles lie over each other by so much, so that two sheets can be laid mark on mark. */
export const tileOverlapMm = 12;

/** One tile of a drawing: which sheet it is, and the part of the drawing on it. */
export interface Tile {
  readonly row: number;
  readonly column: number;
  readonly leftMm: number;
  readonly topMm: number;
}

/** A drawing parted into sheets of one paper. */
export interface Tiling {
  readonly pageMm: { readonly widthMm: number; readonly heightMm: number };
  readonly tileMm: { readonly widthMm: number; readonly heightMm: number };
  readonly rows: number;
  readonly columns: number;
  /** row after row from the upper left */
  readonly tiles: readonly Tile[];
}

const countOf = (lengthMm: number, tileMm: number): number =>
  Math.max(1, Math.ceil((lengthMm - tileOverlapMm) / (tileMm - tileOverlapMm)));

type Size = Readonly<Record<'widthMm' | 'heightMm', number>>;

const tiledOn = (drawing: Size, pageMm: Size): Tiling => {
  const tileMm = {
    widthMm: pageMm.widthMm - tileEdges.leftMm - tileEdges.rightMm,
    heightMm: pageMm.heightMm - tileEdges.topMm - tileEdges.bottomMm,
  };
  const columns = countOf(drawing.widthMm, tileMm.widthMm);
  const rows = countOf(drawing.heightMm, tileMm.heightMm);
  const span = (count: number, mm: number): number => count * mm - (count - 1) * tileOverlapMm;
  // the drawing lies in the middle of all sheets together
  const leftMm = (drawing.widthMm - span(columns, tileMm.widthMm)) / 2;
  const topMm = (drawing.heightMm - span(rows, tileMm.heightMm)) / 2;
  const tiles = Array.from({ length: rows * columns }, (_, at): Tile => {
    const [row, column] = [Math.floor(at / columns), at % columns];
    return {
      row,
      column,
      leftMm: leftMm + column * (tileMm.widthMm - tileOverlapMm),
      topMm: topMm + row * (tileMm.heightMm - tileOverlapMm),
    };
  });
  return { pageMm, tileMm, rows, columns, tiles };
};

/** Parts a drawing into the fewest sheets of a paper, upright or turned; upright where both take as many. */
export const tilingOf = (drawing: Size, paper: PaperName): Tiling => {
  const { widthMm, heightMm } = paperSizes[paper];
  const upright = tiledOn(drawing, { widthMm, heightMm });
  const turned = tiledOn(drawing, { widthMm: heightMm, heightMm: widthMm });
  return turned.tiles.length < upright.tiles.length ? turned : upright;
};
