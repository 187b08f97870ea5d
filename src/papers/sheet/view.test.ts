import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { emptyPlan } from '../../core/empty-plan.test-helper.ts';
import { boatSheet } from './boat-sheet.ts';

const ketch = aBoat().change((boat) => {
  boat.hull.kind = 'ketch';
}).boat;
const { views } = boatSheet({ boat: ketch, plan: { ...emptyPlan, findings: [] }, widthMm: 240, heightMm: 160 });
const metres = fc.double({ min: -3, max: 14, noNaN: true });

test('a ketch is seen from the side, from above and from astern, her tall masts shortened', () => {
  expect(views.map(({ name }) => name)).toEqual(['side', 'top', 'astern']);
  expect(views.map(({ breakMm }) => breakMm === undefined)).toEqual([false, true, false]);
});

test.each(views)('what is drawn in the view $name is found aboard where it is, shortened masts and all', (view) => {
  fc.assert(
    fc.property(metres, metres, (acrossM, secondM) => {
      const [across, second] = view.aboard(view.point(acrossM, secondM));
      expect(across).toBeCloseTo(acrossM, 6);
      expect(second).toBeCloseTo(secondM, 6);
    }),
  );
});
