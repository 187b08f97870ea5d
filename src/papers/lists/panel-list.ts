import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import type { ListCell, ListTable } from '../table/list-table.ts';
import { type CircuitRow, type PanelRow, panelRows } from './panel-rows.ts';
import { printCount } from './print-figure.ts';

const columns: ListTable['columns'] = [
  { id: 'panel', head: 'panel', kind: 'label', share: 1.3, once: true },
  { id: 'from', head: 'hangs on', kind: 'label', once: true },
  { id: 'volts', head: 'volts', kind: 'figure', share: 0.6 },
  { id: 'circuit', head: 'circuit', kind: 'label', share: 1.3 },
  { id: 'name', head: 'name', share: 1.3 },
  { id: 'feeds', head: 'feeds', share: 2.6 },
  { id: 'rating', head: 'rating', unit: 'A', kind: 'figure', share: 0.8 },
  { id: 'kind', head: 'kind' },
  { id: 'typical', head: 'typical', unit: 'A', kind: 'figure', share: 0.8 },
  { id: 'most', head: 'most', unit: 'A', kind: 'figure', share: 0.8 },
  { id: 'peak', head: 'for moments', unit: 'A', kind: 'figure' },
  { id: 'must-break', head: 'must break', unit: 'A', kind: 'figure' },
  { id: 'breaks', head: 'breaks', unit: 'A', kind: 'figure' },
  { id: 'free', head: 'free', share: 0.6 },
];

const mainCells = ({ entry }: PanelRow): ListCell[] => {
  const { panel, from, nominalV, main, typicalA, mostA, peakA } = entry;
  return [
    panel,
    from,
    nominalV,
    'main',
    undefined,
    'the panel',
    main.ratingA,
    main.kind === 'not-known' ? 'not known' : main.kind,
    typicalA,
    mostA,
    peakA,
    main.neededBy === 'limits-itself' ? undefined : main.neededA,
    main.givenA,
    undefined,
  ];
};

const circuitCells = ({ entry: { panel, from, nominalV, branchA } }: PanelRow, row: CircuitRow): ListCell[] => {
  const { circuit, ratingA, typicalA, mostA, peakA, interruptA } = row.entry;
  return [
    panel,
    from,
    nominalV,
    circuit,
    row.name,
    row.feeds.join('; '),
    ratingA,
    row.kind,
    typicalA,
    mostA,
    peakA,
    branchA === 0 ? undefined : branchA,
    interruptA,
    row.isFree ? 'free' : undefined,
  ];
};

const freeCells = ({ key, entry: { from, nominalV } }: PanelRow, freeWays: number): ListCell[] => [
  key,
  from,
  nominalV,
  undefined,
  undefined,
  `${printCount(freeWays, 'place')} with nothing in`,
  ...columns.slice(6, -1).map(() => undefined),
  'free',
];

/** The fuse and breaker table: for each panel its main, its circuits, then a row for places without one. */
export const panelList = (boat: Boat, plan: Plan): ListTable => ({
  id: 'panels',
  title: 'Fuses and breakers',
  says: 'Each panel with its main, its circuits and what is free. What a device must break is the current of a dead short where it stands.',
  columns,
  rows: panelRows(cardBoat(boat), plan).flatMap((row) => [
    mainCells(row),
    ...row.circuits.map((circuit) => circuitCells(row, circuit)),
    ...(row.freeWays === undefined || row.freeWays === 0 ? [] : [freeCells(row, row.freeWays)]),
  ]),
  empty: 'No panel is in the boat file yet.',
});
