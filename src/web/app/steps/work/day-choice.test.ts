import { expect, test } from 'vitest';
import { aPhase } from '../../../../core/work/a-work.test-helper.ts';
import { dayChosen, daysToChoose } from './day-choice.ts';

const phases = [aPhase(), aPhase({ phase: 2 })];

test('days with something to do can be chosen in every phase', () => {
  expect(daysToChoose({ phases }).map(({ phase, day }) => `${phase}.${day}`)).toEqual([
    ...['1.0', '1.1', '1.2', '1.4'],
    ...['2.0', '2.1', '2.2', '2.4'],
  ]);
});

test('the day that was chosen stands while there is work on it; else the next day that is not done', () => {
  const done = new Set(['survey', 'label', 'take-out:compass', 'paper:licence']);
  expect(dayChosen({ phases, done }, { phase: 2, day: 4 })).toEqual({ phase: 2, day: 4 });
  expect(dayChosen({ phases: [aPhase()], done }, { phase: 1, day: 3 })).toEqual({ phase: 1, day: 1 });
  expect(dayChosen({ phases: [], done }, undefined)).toBeUndefined();
});
