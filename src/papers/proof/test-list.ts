import type { Boat } from '../../core/boat/boat-schema.ts';
import { type BoatLog, emptyLog } from '../../core/log/boat-log.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import type { ListTable } from '../table/list-table.ts';
import { testRows } from './test-rows.ts';

/** Every test at the dock in working order, with what is expected and what was found. */
export const testList = (boat: Boat, plan: Plan, log: BoatLog = emptyLog): ListTable => ({
  id: 'tests',
  title: 'Tests at the dock',
  says: 'In the order in which they are done. A reading that passes but is not what this boat should read is in doubt.',
  columns: [
    { id: 'turn', head: 'turn', kind: 'figure', digits: 0, share: 0.4 },
    { id: 'test', head: 'test', share: 2.4 },
    { id: 'where', head: 'where', share: 1 },
    { id: 'power', head: 'power', share: 0.5 },
    { id: 'expect', head: 'expected', share: 1.8 },
    { id: 'found', head: 'found', kind: 'blank', share: 1.1 },
    { id: 'day', head: 'day', kind: 'blank', share: 0.8 },
    { id: 'by', head: 'by', kind: 'blank', share: 0.6 },
    { id: 'id', head: 'id', kind: 'label', printed: false },
  ],
  rows: testRows(cardBoat(boat), plan.tests, log).map(({ test, what, where, expect, result }, at) => [
    at + 1,
    what,
    where === '' ? undefined : where,
    test.power,
    expect,
    result?.found,
    result?.day,
    result?.by === '' ? undefined : result?.by,
    test.id,
  ]),
  empty: 'Nothing is to be tested.',
});
