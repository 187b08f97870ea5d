import { expect, test } from 'vitest';
import { sizeBlockNotMoved } from './size-block-not-moved.ts';
import { foundWith } from './typed-case.test-helper.ts';

const typed = (what: 'ais-bow' | 'ais-stern', figure: number) => ({ unit: 'ais', what, figure, in: 'm' }) as const;

test('an antenna that went to the stern leaves its size block wrong until that is moved too', () => {
  const found = foundWith(sizeBlockNotMoved, [typed('ais-bow', 2), typed('ais-stern', 6)]);
  expect(found).toMatchObject([{ id: 'settings/size-block-not-moved:ais', level: 'fault' }]);
  expect(found[0]?.says).toMatch(/A, antenna to bow 2 m where it is 8 m/);
});

test('the figures of where it stands are right', () => {
  expect(foundWith(sizeBlockNotMoved, [typed('ais-bow', 8), typed('ais-stern', 0)])).toEqual([]);
  expect(foundWith(sizeBlockNotMoved, [])).toEqual([]);
});
