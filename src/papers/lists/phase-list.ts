import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ListTable } from '../table/list-table.ts';
import { currencyOf } from './cure-words.ts';
import { rowsOfPhases } from './phases-text.ts';

const priceOf = (count: number, each: number | undefined): number | undefined =>
  each === undefined ? undefined : Math.round(count * each) / 100;

/** The phases: what each buys, what is bought beyond the work done at once, what to provide early. */
export const phaseList = (boat: Boat, plan: Plan): ListTable => ({
  id: 'phases',
  title: 'Phases',
  says: 'What each phase buys, what is bought beyond the work done at once, and what to provide early.',
  columns: [
    { id: 'phase', head: 'phase', share: 0.6, once: true },
    { id: 'list', head: 'list', share: 1.2, once: true },
    { id: 'what', head: 'what', share: 2.6 },
    { id: 'count', head: 'count', kind: 'figure', share: 0.7 },
    { id: 'unit', head: 'unit', share: 0.7 },
    { id: 'price', head: `price in ${currencyOf(boat)}`, kind: 'figure', digits: 2 },
    { id: 'remark', head: 'remark', share: 2 },
  ],
  rows: [
    ...(plan.phases?.phases ?? []).flatMap(({ phase, buy }) =>
      buy.map(({ item, count, by, each }) => [String(phase), 'buy', item, count, by, priceOf(count, each), undefined]),
    ),
    ...(plan.phases?.costs.more ?? []).map(({ item, count, by, each }) => [
      'all',
      'bought beyond the work done at once',
      item,
      count,
      by,
      priceOf(count, each),
      undefined,
    ]),
    ...(rowsOfPhases(boat, plan)?.provide ?? []).map(({ key, what, fact }) => {
      const entry = plan.phases?.provide.find(({ id }) => id === key);
      const price = entry?.now === undefined ? undefined : entry.now / 100;
      return [String(entry?.phase ?? ''), 'provide early', what, entry?.count ?? 1, 'piece', price, fact];
    }),
  ],
  empty: 'Everything comes in one phase.',
});
