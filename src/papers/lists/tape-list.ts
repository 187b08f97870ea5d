import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ListTable } from '../table/list-table.ts';
import { currencyOf } from './cure-words.ts';
import { someWords } from './order-words.ts';
import { rowsToTape } from './tape-text.ts';

/** What to tape and to prove before buying, a row a thing to do. */
export const tapeList = (boat: Boat, plan: Plan): ListTable => ({
  id: 'tape',
  title: 'To tape before buying',
  says: 'With the layout held, only these could still change the order; most money at stake first.',
  columns: [
    { id: 'todo', head: 'what to do', share: 2.2 },
    { id: 'stake', head: 'at stake', kind: 'figure', digits: 2, share: 0.8 },
    { id: 'currency', head: 'currency', share: 0.8 },
    { id: 'answer', head: 'what the answer does', share: 2.6 },
    { id: 'lines', head: 'lines', share: 2 },
    { id: 'id', head: 'id', kind: 'label', printed: false },
  ],
  rows: rowsToTape(boat, plan).map(({ id, todo, answer, lines, atStake }) => [
    todo,
    atStake / 100,
    currencyOf(boat),
    answer,
    someWords(lines, lines.length),
    id,
  ]),
  empty: 'Nothing that is not yet taped or seen could change the order.',
});
