import type { Boat } from '../../core/boat/boat-schema.ts';
import type { ListTable } from '../table/list-table.ts';

/** What stood in each unit before it was switched off, as it was read off its menus. */
export const keptSettingList = ({ kit }: Boat): ListTable => ({
  id: 'settings-before',
  title: 'What was set before',
  says: 'Read off each unit before it was switched off. Offsets and constants of an old unit do not fit a new one unseen.',
  columns: [
    { id: 'unit', head: 'unit', share: 1.4, once: true },
    { id: 'setting', head: 'setting', share: 1.4 },
    { id: 'value', head: 'stood at', share: 2 },
    { id: 'copied', head: 'all is copied', share: 0.7 },
  ],
  rows: kit.flatMap(({ name, aboard }) =>
    (aboard?.settings ?? []).map((setting) => [
      name,
      setting.name,
      setting.value,
      aboard?.copied === true ? 'yes' : undefined,
    ]),
  ),
  empty: 'No setting has been copied from any unit yet: the walk-round asks for them.',
});
