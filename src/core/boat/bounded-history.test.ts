import { expect, test } from 'vitest';
import { aBoat } from './a-boat.test-helper.ts';
import { boundedHistory } from './bounded-history.ts';
import { applyEdits, redo, undo } from './history.ts';
import { type History, startHistory } from './start-history.ts';

/** A history of some steps: the name of the radio is made one that tells the step. */
const withSteps = (count: number): History =>
  Array.from({ length: count }, (_, at) => at).reduce<History>(
    (history, at) =>
      applyEdits(history, [{ edit: 'accept-finding', params: { finding: `needs/missing ${at}`, reason: 'Known.' } }]),
    startHistory(aBoat().boat),
  );

const titles = ({ done, undone }: History) => [done.map(({ title }) => title), undone.map(({ title }) => title)];

test('of more steps than are kept the oldest go, and what is left can be taken back and made again', () => {
  const history = withSteps(6);
  const kept = boundedHistory(history, { steps: 4, size: 1_000_000 });
  expect(kept.done).toEqual(history.done.slice(2));
  expect(kept.boat).toBe(history.boat);
  const back = [1, 2, 3, 4, 5].reduce((now) => undo(now), kept);
  expect(back.boat.accepted).toHaveLength(2);
  expect([1, 2, 3, 4].reduce((now) => redo(now), back).boat).toEqual(history.boat);
});

test('steps taken back are nearer to hand than the oldest, and the step next to go is kept first', () => {
  const history = undo(undo(withSteps(6)));
  const kept = boundedHistory(history, { steps: 3, size: 1_000_000 });
  expect(titles(kept)).toEqual(titles({ ...history, done: history.done.slice(-1) }));
  expect(boundedHistory(history, { steps: 1, size: 1_000_000 })).toMatchObject({
    done: [],
    undone: history.undone.slice(-1),
  });
});

test('large steps leave room for fewer', () => {
  const history = withSteps(6);
  const one = JSON.stringify([history.done[5]?.forth, history.done[5]?.back]).length;
  expect(boundedHistory(history, { steps: 200, size: one * 2 + 20 }).done).toEqual(history.done.slice(-2));
});

test('a history within its bounds stays the very one', () => {
  const history = withSteps(3);
  expect(boundedHistory(history)).toBe(history);
});
