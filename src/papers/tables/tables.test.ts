import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { applyEdits, type EditCall, undo } from '../../core/boat/history.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { type History, startHistory } from '../../core/boat/start-history.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { cellsOfText, textOfCells } from './cells-of-text.ts';
import { circuitsTable } from './circuits-table.ts';
import { kitTable } from './kit-table.ts';
import { placesTable } from './places-table.ts';
import { type CellsToPut, putCells } from './put-cells.ts';
import { banksTable, panelsTable } from './supply-tables.ts';
import type { BoatTable } from './table-shape.ts';
import { waysTable } from './ways-table.ts';

const gannet = anExample('gannet');
const tablesOf = (boat: Boat): BoatTable[] => [
  placesTable,
  waysTable(boat),
  kitTable(boat),
  circuitsTable(boat),
  banksTable(boat),
  panelsTable(boat),
];

/** The history after edits; undefined where the boat as a whole does not allow them, which a sentence says. */
const made = (edits: readonly EditCall[]): History | undefined => {
  try {
    return applyEdits(startHistory(gannet), edits);
  } catch (error) {
    if (error instanceof UserError) return undefined;
    throw error;
  }
};

/** The boat after cells are put in; throws where an edit is refused. */
const filled = (table: BoatTable, boat: Boat, given: CellsToPut): Boat => {
  const { edits, wrong } = putCells(table, boat, given);
  expect(wrong).toEqual([]);
  return applyEdits(startHistory(boat), edits).boat;
};
const cell = (row: string, column: string, text: string): CellsToPut => ({ cells: [{ row, column, text }] });

describe('text from a spreadsheet', () => {
  test('is read cell by cell, with what stands in quotes as one', () => {
    expect(cellsOfText('helm\t2.35 m\r\nmast\t"two\nlines, 12"" high"\n')).toEqual([
      ['helm', '2.35 m'],
      ['mast', 'two\nlines, 12" high'],
    ]);
  });

  test('keeps the inches that no quote begins, and a quote that nothing ends', () => {
    expect(cellsOfText('7"\t12 ft 6"\n"half')).toEqual([['7"', '12 ft 6"'], ['"half']]);
  });

  test('comes back from what is copied', () => {
    fc.assert(
      fc.property(fc.array(fc.array(fc.string(), { minLength: 1 }), { minLength: 1 }), (rows) => {
        // a last row of one empty cell is a line end, and no row
        const copied = `${textOfCells(rows)}\n`;
        expect(cellsOfText(copied)).toEqual(rows);
      }),
    );
  });
});

describe('every table of Gannet', () => {
  test.each(tablesOf(gannet).map((table) => [table.says, table] as const))('%s says what is there', (_, table) => {
    const rows = table.rowsOf(gannet);
    expect(rows.length).toBeGreaterThan(0);
    for (const { cells } of rows)
      expect(new Set(Object.keys(cells))).toEqual(new Set(table.columns.map(({ id }) => id)));
  });

  test.each(tablesOf(gannet).map((table) => [table.says, table] as const))(
    '%s pasted over itself changes nothing',
    (_, table) => {
      const cells = table
        .rowsOf(gannet)
        .flatMap((row) => table.columns.map(({ id }) => ({ row: row.id, column: id, text: row.cells[id] ?? '' })));
      expect(putCells(table, gannet, { cells })).toEqual({ edits: [], wrong: [] });
    },
  );

  test.each(tablesOf(gannet).map((table) => [table.says, table] as const))(
    'whatever is typed in %s is understood, or refused in a sentence, and a boat that reads is left',
    (_, table) => {
      const rows = table.rowsOf(gannet).map(({ id }) => id);
      const columns = table.columns.map(({ id }) => id);
      const typed = fc.oneof(
        fc.string(),
        fc.constantFrom('', '2.35 m', '7 ft 9', '-1', '25 mm', 'yes', 'goes', 'helm', '12', '5 A', 'fuse', '3'),
        fc.constantFrom(...table.columns.flatMap(({ choices = [] }) => choices.map(({ says }) => says)), 'x'),
      );
      fc.assert(
        fc.property(fc.constantFrom(...rows), fc.constantFrom(...columns), typed, (row, column, text) => {
          const { edits, wrong } = putCells(table, gannet, cell(row, column, text));
          if (wrong.length > 0) {
            expect(edits).toEqual([]);
            expect(wrong[0]?.says).toMatch(/[.!]$/);
            return;
          }
          const history = made(edits);
          if (history === undefined) return;
          expect(readBoat(writeBoat(history.boat)).name).toBe('Gannet');
          expect(writeBoat(undo(history).boat)).toBe(writeBoat(gannet));
        }),
        { numRuns: 60 },
      );
    },
  );
});

describe('what is typed', () => {
  const [way, place, unit] = [gannet.ways[0], gannet.places[0], gannet.kit[0]];
  if (way === undefined || place === undefined || unit === undefined) throw new Error('Gannet is empty.');

  test('a length in feet is taped to the millimetre', () => {
    const boat = filled(waysTable(gannet), gannet, cell(way.id, 'length', '12 ft 6'));
    expect(boat.ways.find(({ id }) => id === way.id)?.length).toEqual({ valueM: 3.81, how: 'taped' });
  });

  test('a bore without a unit is in millimetres, one in inches is not', () => {
    const bore = (text: string) =>
      filled(waysTable(gannet), gannet, cell(way.id, 'bore', text)).ways.find(({ id }) => id === way.id)?.bore?.mm;
    expect([bore('25'), bore('1 in')]).toEqual([25, 25.4]);
  });

  test('a place moves to port below the water', () => {
    const boat = filled(placesTable, gannet, {
      cells: [
        { row: place.id, column: 'y', text: '−0.8 m' },
        { row: place.id, column: 'z', text: '-1 ft' },
      ],
    });
    expect(boat.places.find(({ id }) => id === place.id)).toMatchObject({ yM: -0.8, zM: -0.305 });
  });

  test('one cell that is not understood keeps all others out', () => {
    const given = {
      cells: [
        { row: unit.id, column: 'fate', text: 'goes' },
        { row: unit.id, column: 'place', text: 'the moon' },
      ],
    };
    const { edits, wrong } = putCells(kitTable(gannet), gannet, given);
    expect(edits).toEqual([]);
    expect(wrong).toHaveLength(1);
    expect(wrong[0]?.where).toBe(`${unit.name}, place`);
  });

  test('rows below the last are new units, found by plain words, each with an id of its own', () => {
    const newRows = [
      { name: 'Mast light', sheet: '', fate: '', place: '' },
      { name: 'Spare radio', sheet: 'vhf radio', fate: 'comes', place: gannet.places[1]?.name ?? '' },
      { name: 'Spare radio', sheet: 'vhf radio', fate: 'stays', place: gannet.places[1]?.name ?? '' },
    ];
    const refused = putCells(kitTable(gannet), gannet, { cells: [], newRows });
    expect(refused.wrong.map(({ where }) => where)).toEqual(['new row 1']);
    const boat = filled(kitTable(gannet), gannet, { cells: [], newRows: newRows.slice(1) });
    expect(boat.kit.slice(-2).map(({ id, fate, place: at }) => [id, fate, at])).toEqual([
      ['spare-radio', 'comes', gannet.places[1]?.id],
      ['spare-radio-2', 'stays', gannet.places[1]?.id],
    ]);
  });

  test('a new place, a way to it and a panel there are typed in rows', () => {
    const withPlace = filled(placesTable, gannet, {
      cells: [],
      newRows: [{ name: 'Chart table', x: '6 m', y: '-1 m' }],
    });
    expect(withPlace.places.at(-1)).toMatchObject({ id: 'chart-table', xM: 6, yM: -1 });
    const withWay = filled(waysTable(withPlace), withPlace, {
      cells: [],
      newRows: [{ from: 'chart table', to: place.name, length: '2.5 m', bore: '20' }],
    });
    expect(withWay.ways.at(-1)).toMatchObject({ length: { valueM: 2.5, how: 'taped' }, bore: { mm: 20 } });
    const withPanel = filled(panelsTable(withWay), withWay, {
      cells: [],
      newRows: [{ id: 'Chart', place: 'chart table', main: '20 A' }],
    });
    const withCircuit = filled(circuitsTable(withPanel), withPanel, {
      cells: [],
      newRows: [{ name: 'Instruments', panel: 'chart', rating: '5 A', feeds: gannet.buses[0]?.name ?? '' }],
    });
    expect(withCircuit.supply.panels.at(-1)?.circuits).toEqual([
      { id: 'instruments', name: 'Instruments', ratingA: 5, kind: 'breaker', feeds: [gannet.buses[0]?.id] },
    ]);
    const others = withCircuit.supply.panels.slice(0, -1).flatMap(({ circuits }) => circuits);
    expect(others.flatMap(({ feeds }) => feeds)).not.toContain(gannet.buses[0]?.id);
  });
});
