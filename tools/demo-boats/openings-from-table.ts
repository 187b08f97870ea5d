import type { Opening } from '../../src/core/boat/opening.ts';
import type { OpeningRow } from './table.ts';

/** What a table says of openings only in words, or not at all: by opening, or by each of several that one row counts. */
export type OpeningsByHand = Readonly<Record<string, Pick<Opening, 'name'> & Partial<Opening>>>;

const panels: ReadonlyMap<string, Opening['panel']> = new Map([
  ['GRP 6 mm over 12 mm plywood', { material: 'grp', thicknessMm: 6, core: { material: 'plywood', thicknessMm: 12 } }],
  ['GRP 5 mm over 12 mm plywood', { material: 'grp', thicknessMm: 5, core: { material: 'plywood', thicknessMm: 12 } }],
  ['plywood 15 mm', { material: 'plywood', thicknessMm: 15 }],
  ['GRP 8 mm', { material: 'grp', thicknessMm: 8 }],
  ['GRP pedestal 8 mm', { material: 'grp', thicknessMm: 8 }],
  ['solid GRP 16 mm', { material: 'grp', thicknessMm: 16 }],
  ['aluminium 4 mm', { material: 'aluminium', thicknessMm: 4 }],
]);

const holeFrom = (row: OpeningRow, id: string, own: OpeningsByHand): Opening => {
  const panel = panels.get(row.panel);
  const more = own[id];
  if (panel === undefined || more === undefined) throw new Error(`The tables name ${id}, of which more is not said.`);
  return {
    id,
    place: row.place,
    hole: { shape: row.shape, widthMm: row.wMm, heightMm: row.hMm },
    how: 'taped',
    ...(row.newUnit === null ? {} : { for: row.newUnit }),
    ...more,
    panel: { ...panel, ...more.panel },
    ...(row.depthFreeMm === undefined ? {} : { behind: { depthMm: row.depthFreeMm, how: 'taped', ...more.behind } }),
  };
};

/** The openings of a table; a row that counts several gives one each, numbered. */
export const openingsFromTable = (rows: readonly OpeningRow[], own: OpeningsByHand): Opening[] =>
  rows.flatMap((row) =>
    row.count === undefined
      ? [holeFrom(row, row.id, own)]
      : Array.from({ length: row.count }, (_, at) => holeFrom(row, `${row.id}-${at + 1}`, own)),
  );
