import { expect, test } from 'vitest';
import { aDevice, aPlace, aProblem, aWay } from './a-problem.test-helper.ts';
import { checkLayout } from './check-layout.ts';
import { ladderBoat } from './ladder-boat.test-helper.ts';
import { moveTee } from './move-tee.ts';
import type { Problem } from './problem.ts';
import { solveLayout } from './solve-layout.ts';
import { teeChoices } from './tee-choices.ts';

const lastLayout = (problem: Problem) => {
  const layout = [...solveLayout(problem, { work: 20_000 })].at(-1);
  if (layout === undefined) throw new Error('No layout was found.');
  return layout;
};

const bowToStern = aProblem({
  places: [aPlace('bow'), aPlace('helm'), aPlace('stern')],
  ways: [aWay({ id: 'fore', a: 'bow', b: 'helm', mm: 4000 }), aWay({ id: 'rear', a: 'helm', b: 'stern', mm: 5800 })],
  devices: [aDevice('compass.n2k', 'bow'), aDevice('display.n2k', 'helm'), aDevice('engine.n2k', 'stern')],
});

test('the tee at the helm could stand 4 m forward for 20.00 more, and 5.8 m aft only with a drop over 6 m', () => {
  const choices = teeChoices(bowToStern, lastLayout(bowToStern));
  const display = choices.find(({ port }) => port === 'display.n2k');
  expect(display).toMatchObject({ place: 'helm', dropM: 0.3 });
  expect(display?.others).toEqual([
    { place: 'bow', step: 0, dropM: 4.3, costMore: 4000 * 500, breaks: [] },
    {
      place: 'stern',
      step: 2,
      dropM: 6.1,
      costMore: 5800 * 500,
      breaks: ['The drop to display.n2k is 6.1 m as bought; the limit is 6 m.'],
    },
  ]);
});

test('on a proven layout no tee could stand cheaper without breaking a limit, on twenty boats', () => {
  let seen = 0;
  for (let seed = 0; seed < 20; seed += 1) {
    const problem = ladderBoat(seed, { places: 16, devices: 9 });
    const layout = lastLayout(problem);
    if (layout.status !== 'proven') continue;
    for (const { port, others } of teeChoices(problem, layout)) {
      for (const { step, costMore, breaks } of others) {
        seen += 1;
        expect(costMore >= 0 || breaks.length > 0).toBe(true);
        const moved = { ...layout, walk: moveTee(layout.walk, port, step), bound: 0 };
        expect(checkLayout(problem, moved).cost).toBe(layout.cost + costMore);
      }
    }
  }
  expect(seen).toBeGreaterThan(100);
});
