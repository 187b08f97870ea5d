import { expect, test } from 'vitest';
import { aBoat } from '../../../../core/boat/a-boat.test-helper.ts';
import { aWork } from '../../../../core/work/a-work.test-helper.ts';
import { aPlan } from '../../../../papers/lists/a-plan.test-helper.ts';
import type { WorkReply, WorkRequest } from '../../../workers/work-protocol.ts';
import { workDesk } from './work-desk.ts';

const { boat } = aBoat();
const [first, second] = [aWork(), aWork()];
const plan = aPlan({ work: first });

const aDesk = () => {
  const searches: { request: WorkRequest; hear: (reply: WorkReply) => void; isEnded: boolean }[] = [];
  const desk = workDesk((request, hear) => {
    const search = { request, hear, isEnded: false };
    searches.push(search);
    return () => {
      search.isEnded = true;
    };
  });
  return { desk, searches };
};

test('the quick order stands at once, and gives way to each better one', () => {
  const { desk, searches } = aDesk();
  desk.want({ boat, plan, done: new Map() });
  expect(desk.state()).toEqual({ work: first, isSearching: true });
  searches[0]?.hear({ kind: 'work', work: second, isLast: true });
  expect(desk.state()).toEqual({ work: second, plan, isSearching: false });
});

test('the same asked again begins no search; a tick does, and what comes late of the one before is dropped', () => {
  const { desk, searches } = aDesk();
  desk.want({ boat, plan, done: new Map() });
  desk.want({ boat, plan, done: new Map() });
  expect(searches).toHaveLength(1);
  desk.want({ boat, plan, done: new Map([['survey', '2027-04-05']]) });
  expect(searches.map(({ isEnded }) => isEnded)).toEqual([true, false]);
  searches[0]?.hear({ kind: 'work', work: second, isLast: true });
  expect(desk.state()).toEqual({ work: first, isSearching: true });
});

test('a search that is stopped keeps what it found, and one that breaks says so', () => {
  const { desk, searches } = aDesk();
  desk.want({ boat, plan, done: new Map() });
  searches[0]?.hear({ kind: 'work', work: second, isLast: false });
  desk.stop();
  expect([desk.state().work, desk.state().isSearching, searches[0]?.isEnded]).toEqual([second, false, true]);
  desk.want({ boat, plan, done: new Map([['survey', '2027-04-05']]) });
  searches[1]?.hear({ kind: 'fault', detail: 'broke' });
  expect(desk.state()).toEqual({ work: second, isSearching: false, fault: 'broke' });
});

test('a search ends with the last part that looks on, and is taken up again by the next', () => {
  const { desk, searches } = aDesk();
  const [one, other] = [desk.hold(), desk.hold()];
  desk.want({ boat, plan, done: new Map() });
  one();
  expect(searches[0]?.isEnded).toBe(false);
  other();
  expect(searches[0]?.isEnded).toBe(true);
  desk.want({ boat, plan, done: new Map() });
  expect(searches).toHaveLength(2);
});
