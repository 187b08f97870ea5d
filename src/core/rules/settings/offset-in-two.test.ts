import { expect, test } from 'vitest';
import { offsetInTwo } from './offset-in-two.ts';
import { foundWith } from './typed-case.test-helper.ts';

const typed = (unit: string, figure: number) => ({ unit, what: 'depth-offset', figure, in: 'm' }) as const;

test('an offset in the sensor and again in the display is a fault, wrong by the second', () => {
  expect(foundWith(offsetInTwo, [typed('compass', -1.1), typed('display', -1.1)])).toMatchObject([
    { id: 'settings/offset-in-two:compass,display', level: 'fault', measured: { value: -1.1 } },
  ]);
});

test('set once in either, or not read off yet, it is none', () => {
  expect(foundWith(offsetInTwo, [typed('compass', -1.1), typed('display', 0)])).toEqual([]);
  expect(foundWith(offsetInTwo, [typed('compass', 0), typed('display', -1.1)])).toEqual([]);
  expect(foundWith(offsetInTwo, [typed('display', -1.1)])).toEqual([]);
});
