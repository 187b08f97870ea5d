import { indexBoat } from '../../../core/boat/boat-index.ts';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import { oneTerminator } from '../../../core/facts/fallback-kit.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { type BlackoutRow, blackoutRows } from '../../lists/blackout-rows.ts';
import { vitalNames, vitalWords } from '../../lists/vital-words.ts';
import type { ListTable } from '../../table/list-table.ts';
import type { Chapter } from '../binder-shape.ts';

const columns: ListTable['columns'] = [
  { id: 'fails', head: 'when one of these fails', share: 2 },
  { id: 'takes', head: 'these are gone', share: 2 },
  { id: 'perhaps', head: 'perhaps these too', share: 2 },
  { id: 'point', head: 'single point for', share: 0.7 },
];

const pointsOf = ({ vitals }: BlackoutRow): string =>
  vitals.map(({ of, perhaps }) => `${vitalNames[of].name.toLowerCase()}${perhaps ? ' perhaps' : ''}`).join(', ');

const rowOf = (row: BlackoutRow): string[] => [
  row.what.join('; '),
  row.takes === '' ? (row.vitals.some(({ of }) => of === 'radio') ? 'no radio can talk' : '') : row.takes,
  row.perhaps,
  pointsOf(row),
];

/** What each single failure takes, failures that take the same in one row: the table to find a fault by, and to sail by. */
export const whatGoesDarkChapter = (boat: Boat, plan: Plan): Chapter => {
  const index = indexBoat(boat);
  const { rows, failures, harmless } = blackoutRows(index, plan);
  const vitals = plan.vitals.flatMap((vital) => {
    const { says, left } = vitalWords(index, plan, vital);
    return left === '' ? [says] : [`${says} ${left}`];
  });
  return {
    id: 'blackouts',
    title: 'What goes dark',
    blocks: [
      {
        kind: 'words',
        text: `${failures} single failures were looked at, each alone; ${harmless} of them take nothing off any screen. “2 of 3” is off two of the three screens that have it; without a number it is off every one. “Perhaps”: its bus is ${oneTerminator.says}.`,
      },
      { kind: 'points', points: vitals },
      {
        kind: 'table',
        table: {
          id: 'blackouts',
          title: 'Worst first',
          columns,
          rows: rows.map(rowOf),
          empty: 'Nothing that can fail takes a reading off a screen.',
        },
      },
    ],
  };
};
