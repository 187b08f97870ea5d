import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import type { ListTable } from '../table/list-table.ts';
import { typedRows } from './typed-rows.ts';

/** The settings sheet: what to type into each unit by the boat’s own measures, in its unit and in the other, with boxes. */
export const typedList = (boat: Boat, plan: Plan): ListTable => ({
  id: 'settings-by-measure',
  title: 'Settings by measure',
  says: 'What is typed into each unit by the boat’s own measures, in the unit of the device and beside it in the other. Write down what stands there afterwards, and read it back.',
  columns: [
    { id: 'unit', head: 'unit', share: 1.5, once: true },
    { id: 'place', head: 'place', share: 1, once: true, printed: false },
    { id: 'what', head: 'what', share: 1.3 },
    { id: 'type', head: 'type', share: 0.9 },
    { id: 'also', head: 'that is', share: 0.7 },
    { id: 'note', head: 'counted from, and how well known', share: 1.8 },
    { id: 'who', head: 'who may enter it', share: 1.6, printed: false },
    { id: 'if-wrong', head: 'if it is wrong', share: 2, printed: false },
    { id: 'stands', head: 'stands there', kind: 'blank', share: 0.8 },
    { id: 'done', head: 'typed', kind: 'tick', share: 0.5 },
  ],
  rows: typedRows(cardBoat(boat), plan).map(({ unit, place, what, type, also, note, who, ifWrong, stands, agrees }) => [
    unit,
    place,
    what,
    type,
    also,
    note,
    who,
    ifWrong,
    stands === '' ? undefined : stands,
    agrees === true ? 'yes' : undefined,
  ]),
  empty: 'No unit aboard is set by a measure of the boat.',
});
