import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { csvText } from './csv.ts';
import { type CircuitRow, type PanelRow, panelRows } from './panel-rows.ts';
import { printCount } from './print-figure.ts';

const header = [
  'panel',
  'hangs on',
  'volts',
  'circuit',
  'name',
  'feeds',
  'rating A',
  'kind',
  'typical A',
  'most A',
  'for moments A',
  'must break A',
  'breaks A',
  'free',
] as const;

const figure = (value: number | undefined): string => (value === undefined ? '' : String(Number(value.toFixed(2))));

const mainCells = ({ entry }: PanelRow): string[] => {
  const { panel, from, nominalV, main, typicalA, mostA, peakA } = entry;
  const kind = main.kind === 'not-known' ? 'not known' : main.kind;
  const needed = main.neededBy === 'limits-itself' ? undefined : main.neededA;
  return [
    panel,
    from,
    figure(nominalV),
    'main',
    '',
    'the panel',
    figure(main.ratingA),
    kind,
    figure(typicalA),
    figure(mostA),
    figure(peakA),
    figure(needed),
    figure(main.givenA),
    '',
  ];
};

const circuitCells = ({ entry: { panel, from, nominalV, branchA } }: PanelRow, row: CircuitRow): string[] => {
  const { circuit, ratingA, typicalA, mostA, peakA, interruptA } = row.entry;
  return [
    panel,
    from,
    figure(nominalV),
    circuit,
    row.name ?? '',
    row.feeds.join('; '),
    figure(ratingA),
    row.kind,
    figure(typicalA),
    figure(mostA),
    figure(peakA),
    branchA === 0 ? '' : figure(branchA),
    figure(interruptA),
    row.isFree ? 'free' : '',
  ];
};

/** The fuse and breaker table as CSV: for each panel its main, its circuits, then a row for places without one. */
export const panelsCsv = (boat: Boat, plan: Plan): string =>
  csvText([
    header,
    ...panelRows(cardBoat(boat), plan).flatMap((row) => [
      mainCells(row),
      ...row.circuits.map((circuit) => circuitCells(row, circuit)),
      ...(row.freeWays === undefined || row.freeWays === 0
        ? []
        : [
            [
              row.key,
              row.entry.from,
              figure(row.entry.nominalV),
              '',
              '',
              `${printCount(row.freeWays, 'place')} with nothing in`,
              ...header.slice(6, -1).map(() => ''),
              'free',
            ],
          ]),
    ]),
  ]);
