import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Measure } from '../../boat/measure.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { lengthGuessedAndBought } from './length-guessed-and-bought.ts';

type State = NonNullable<NonNullable<Boat['pins']>['layouts']>[string]['state'];

/** The small boat with the trunk from helm to mast by the locker in a state, and one of its two ways as given. */
const found = (state: State, length: Measure) =>
  findingsOf(lengthGuessedAndBought, {
    boat: aBoat()
      .change((boat) => {
        for (const way of boat.ways) if (way.id === 'locker-helm') way.length = length;
      })
      .with({
        pins: {
          layouts: {
            nav: {
              grade: 'light',
              walk: [
                { place: 'helm', tees: ['display.n2k'] },
                { place: 'locker', via: 'locker-helm', tees: ['feed'] },
                { place: 'mast-base', via: 'locker-mast', tees: ['gnss.n2k'] },
                { place: 'locker', via: 'locker-mast', tees: [] },
                { place: 'helm', via: 'locker-helm', tees: [] },
              ],
              state,
            },
          },
        },
      }).boat,
  });
const guessed: Measure = { valueM: 2.2, how: 'guessed', lessM: 0.2, moreM: 0.66 };

test('bought trunk on taped ways, or on lengths from papers, passes', () => {
  expect(found('bought', { ...guessed, how: 'taped' })).toEqual([]);
  expect(found('bought', { ...guessed, how: 'papers' })).toEqual([]);
});

test('bought trunk on a guessed way is one doubt about that way, even where it passes twice', () => {
  expect(found('bought', guessed)).toMatchObject([
    {
      level: 'doubt',
      about: ['locker-helm', 'nav'],
      measured: { value: 0.66, unit: 'm' },
      says: expect.stringMatching(/from electrical locker to helm dash is guessed: 2\.20 m, and up to 2\.86 m/),
    },
  ]);
});

test('a layout that is only held, or that is laid, is not spoken of', () => {
  expect(found('fixed', guessed)).toEqual([]);
  expect(found('fitted', guessed)).toEqual([]);
});
