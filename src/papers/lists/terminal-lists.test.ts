import { expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { boatLog } from '../../core/log/boat-log.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';
import { jobTickId } from '../../core/work/ticks.ts';
import { testsText } from '../proof/tests-text.ts';
import { jobsText } from '../work/jobs-text.ts';
import { orderText } from './order-text.ts';

const boat = anExample('sandpiper');
const planned = quickPlan(boat);
const idsIn = (text: string): string[] => [...text.matchAll(/^ +\[(.+)\]$/gm)].flatMap(([, id]) => id ?? []);

const inOrder = (ids: readonly string[]): string[] => [...ids].sort(byCodeUnit);

const jobs = (planned.work?.phases ?? []).flatMap((phase) => phase.jobs).filter(({ leftOut }) => leftOut === undefined);
const [job] = jobs;
const [test1] = planned.tests;
const at = '2027-03-31T09:30:00Z';
const log = boatLog([
  { kind: 'tick', id: 'entry0001', at, of: jobTickId(job?.id ?? ''), done: true },
  { kind: 'reading', id: 'entry0002', at, test: test1?.id ?? '', value: 118 },
]);

test('every item, job and test stands once on its list, with the id by which it is noted', () => {
  expect(inOrder(idsIn(orderText(boat, planned)))).toEqual(inOrder(planned.shopping.map(({ id }) => id)));
  expect(inOrder(idsIn(jobsText(boat, planned, log)))).toEqual(inOrder(jobs.map(({ id }) => id)));
  expect(idsIn(testsText(boat, planned, log))).toEqual(planned.tests.map(({ id }) => id));
});

test('what is done, at hand and found is crossed, and no line but an id is wider than 80 columns', () => {
  const [entry, ...others] = planned.shopping;
  const arrived =
    entry === undefined ? [] : [{ ...entry, order: { item: entry.id, state: 'arrived' as const } }, ...others];
  const lists = [
    orderText(boat, { ...planned, shopping: arrived }),
    jobsText(boat, planned, log),
    testsText(boat, planned, log),
  ];
  for (const text of lists) {
    expect(text.match(/\[x\]/g)).toHaveLength(1);
    expect(text.split('\n').filter((line) => line.length > 80 && !line.trimStart().startsWith('['))).toEqual([]);
    expect(text).not.toMatch(/undefined|NaN|null/);
  }
  expect(lists[1]).toContain(', 1 done.');
  expect(lists[2]).toContain('Found on 2027-03-31: ✗ 118 Ω, wrong.');
});
