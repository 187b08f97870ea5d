import fc from 'fast-check';
import { expect, test } from 'vitest';
import { drawSeed } from './draw-seed.ts';

const drawn = (): number[] => fc.sample(fc.nat(), 5);

test('the usual seed draws the same again and again', () => {
  expect(drawSeed(undefined)).toEqual(drawSeed(''));
  expect(fc.sample(fc.nat(), { ...drawSeed(undefined), numRuns: 5 })).toEqual(
    fc.sample(fc.nat(), { ...drawSeed(undefined), numRuns: 5 }),
  );
});

test.runIf((process.env.FAIRLEAD_SEED ?? '') === '')('is the one that every test draws by', () => {
  expect(fc.readConfigureGlobal()).toMatchObject(drawSeed(undefined));
  expect(drawn()).toEqual(drawn());
});

test('another seed is taken as it is asked for, and none at all where each test draws its own', () => {
  expect(drawSeed('42')).toEqual({ seed: 42 });
  expect(drawSeed('-7')).toEqual({ seed: -7 });
  expect(drawSeed('random')).toEqual({});
});

test.each(['yes', '1.5', '4294967296', 'NaN'])('%s is refused', (asked) => {
  expect(() => drawSeed(asked)).toThrow('FAIRLEAD_SEED');
});
