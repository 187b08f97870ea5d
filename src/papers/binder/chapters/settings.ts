import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { cardBoat } from '../../cards/card-boat.ts';
import { type SettingUnit, settingUnits } from '../../sources/setting-rows.ts';
import type { ListTable } from '../../table/list-table.ts';
import type { Block, Chapter } from '../binder-shape.ts';

const columns: ListTable['columns'] = [
  { id: 'done', head: 'done', kind: 'tick' },
  { id: 'port', head: 'port' },
  { id: 'what', head: 'what', share: 2 },
  { id: 'to', head: 'set to' },
  { id: 'how', head: 'how, and for whom', share: 2 },
  { id: 'before', head: 'stood before', kind: 'blank' },
];

const unitTable = ({ kit, name, place, rows }: SettingUnit): Block => ({
  kind: 'table',
  table: {
    id: `settings-${kit}`,
    title: `${name}, ${place}`,
    columns,
    rows: rows.map(({ port, what, to, more, forWhom }) => [
      '',
      port,
      what,
      to,
      [more, forWhom].filter((part) => part !== '').join('; '),
      '',
    ]),
    empty: 'Nothing is to be set.',
  },
});

/** Papers that go before, what to type by the boat’s own measures in both units with boxes, then what to switch on, off and choose in each unit, with room for what stood there before. */
export const settingsChapter = (
  boat: Boat,
  plan: Plan,
  { byMeasure, before }: { readonly byMeasure: readonly ListTable[]; readonly before: readonly ListTable[] },
): Chapter => ({
  id: 'settings',
  title: 'Settings by unit',
  blocks: [
    ...byMeasure.map((table): Block => ({ kind: 'table', table })),
    { kind: 'heading', text: 'Messages, sources and numbers' },
    {
      kind: 'words',
      text: 'What to switch on, off and choose in each unit. Change one thing, look at every screen, then the next; write down what stood there before.',
    },
    ...settingUnits(cardBoat(boat), plan).map(unitTable),
    ...before.map((table): Block => ({ kind: 'table', table })),
  ],
});
