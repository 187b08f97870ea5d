import { expect, test } from 'vitest';
import { aBoat } from '../core/boat/a-boat.test-helper.ts';
import { boatLog } from '../core/log/boat-log.ts';
import { plan } from '../core/plan.ts';
import { solveWorkOrder } from './solve-work-order.ts';

const { boat } = aBoat().change((draft) => {
  draft.work = { starts: [{ phase: 1, on: '2027-04-05' }] };
});
const planned = plan(boat, new Map());
const log = boatLog([{ kind: 'tick', id: 'entry0001', at: '2027-04-07T12:00:00Z', of: 'job/survey', done: true }]);

test('what is done stays on its day, the rest comes no sooner, and one who has seen enough gets what was found, marked so', async () => {
  const says: string[] = [];
  const isStopped = (): boolean => says.length > 0;
  const watch = { isStopped, onProgress: ({ found = '' }) => says.push(found) };
  const [phase] = (await solveWorkOrder({ boat, plan: planned, log, watch })).work?.phases ?? [];
  const starts = phase?.order?.starts ?? [];
  const dateOf = (job: string): string | undefined =>
    phase?.days[starts.find((start) => start.job === job)?.day ?? -1]?.date;
  expect(dateOf('survey')).toBe('2027-04-07');
  const others = starts.filter(({ job }) => job !== 'survey').map(({ job }) => dateOf(job) ?? '');
  expect(others.length).toBeGreaterThan(3);
  expect(others.every((date) => date >= '2027-04-07')).toBe(true);
  expect(says[0]).toMatch(/dark so far, no order has fewer than/);
  expect(['stopped', 'proven']).toContain(phase?.order?.status);
});
