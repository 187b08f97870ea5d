import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { aFinding, aPlan, aReading } from './a-plan.test-helper.ts';
import { planChange } from './plan-change.ts';
import { planChangeWords } from './plan-change-words.ts';

const tern = aBoat().boat;
const words = (...plans: Parameters<typeof planChange>): string => planChangeWords(planChange(...plans), tern);

test('findings that went and findings that came are counted, and one that says something else is told apart', () => {
  const before = aPlan({ findings: ['a', 'b', 'c', 'd'].map((id) => aFinding(id)) });
  const after = aPlan({ findings: [aFinding('d', { says: 'The drop is 7 m long.' }), aFinding('e')] });
  const change = planChange(before, after);
  expect(change.gone.map(({ id }) => id)).toEqual(['a', 'b', 'c']);
  expect(change.came.map(({ id }) => id)).toEqual(['e']);
  expect(change.altered.map(({ says }) => says)).toEqual(['The drop is 7 m long.']);
  expect(words(before, after)).toBe('3 findings less, 1 new, 1 changed.');
});

test('a finding that becomes graver is one that says something else', () => {
  const { altered } = planChange(
    aPlan({ findings: [aFinding('a', { level: 'doubt' })] }),
    aPlan({ findings: [aFinding('a', { level: 'danger' })] }),
  );
  expect(altered.map(({ level }) => level)).toEqual(['danger']);
});

test('a reading that arrives now and one that arrives no longer are named with their screen', () => {
  const before = aPlan({
    readings: [aReading({ at: 'display', arrives: false }), aReading({ reading: 'heading', at: 'display' })],
  });
  const after = aPlan({
    readings: [aReading({ at: 'display' }), aReading({ reading: 'heading', at: 'display', arrives: false })],
  });
  expect(words(before, after)).toBe(
    'The findings stay the same. Depth at Helm display arrives now. Heading at Helm display arrives no longer.',
  );
});

test('a need that nobody states any longer is not a reading lost', () => {
  const change = planChange(aPlan({ readings: [aReading({ at: 'display' })] }), aPlan());
  expect(change.lost).toEqual([]);
  expect(planChangeWords(change, tern)).toBe(
    'The findings stay the same. Depth at Helm display is no longer asked for.',
  );
});

test('two engines are two readings', () => {
  const engine = (instance: number, arrives: boolean) => aReading({ reading: 'engine', instance, arrives });
  const change = planChange(
    aPlan({ readings: [engine(0, true), engine(1, false)] }),
    aPlan({ readings: [engine(0, true), engine(1, true)] }),
  );
  expect(change.gained.map(({ instance }) => instance)).toEqual([1]);
});

test('more than three readings are counted, not named', () => {
  const readings = ['depth', 'heading', 'rudder', 'position'] as const;
  const plan = (arrives: boolean) => aPlan({ readings: readings.map((reading) => aReading({ reading, arrives })) });
  expect(words(plan(false), plan(true))).toBe('The findings stay the same. 4 readings arrive now.');
});

test('only new findings are called new findings', () => {
  expect(words(aPlan(), aPlan({ findings: [aFinding('a')] }))).toBe('1 new finding.');
});

test('what comes by a change goes when it is taken back', () => {
  const plans = fc
    .record({
      ids: fc.uniqueArray(fc.constantFrom('a', 'b', 'c', 'd', 'e')),
      met: fc.array(fc.boolean(), { minLength: 4, maxLength: 4 }),
    })
    .map(({ ids, met }) =>
      aPlan({
        findings: ids.map((id) => aFinding(id)),
        readings: met.map((arrives, instance) => aReading({ reading: 'engine', instance, arrives })),
      }),
    );
  fc.assert(
    fc.property(plans, plans, (a, b) => {
      const [forth, back] = [planChange(a, b), planChange(b, a)];
      const ids = (list: readonly { id: string }[]) => list.map(({ id }) => id);
      const numbers = (list: readonly { instance?: number }[]) => list.map(({ instance }) => instance);
      expect(ids(forth.came)).toEqual(ids(back.gone));
      expect(ids(forth.gone)).toEqual(ids(back.came));
      expect(numbers(forth.gained)).toEqual(numbers(back.lost));
      expect(a.findings.length - forth.gone.length + forth.came.length).toBe(b.findings.length);
    }),
  );
});
