import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nextLabels } from './next-labels.ts';

test('the next label is higher than any handed out, and only lines without one get it', () => {
  expect(nextLabels({ 'drop:a~b': 'C07', 'feed:x~y': 'MAST-1' }, ['drop:a~b', 'drop:a~c', 'pair:a~d'])).toEqual({
    'drop:a~c': 'C08',
    'pair:a~d': 'C09',
  });
  expect(nextLabels({}, ['drop:a~b'])).toEqual({ 'drop:a~b': 'C01' });
});

test('labels of a boat with more than 99 lines have three digits, so that they sort', () => {
  const labels = Object.values(
    nextLabels(
      {},
      Array.from({ length: 100 }, (_, at) => `drop:a~b${at}`),
    ),
  );
  expect([labels[0], labels[99]]).toEqual(['C001', 'C100']);
});

test('no label is handed out twice, whatever lines come and go', () => {
  const line = fc.stringMatching(/^drop:[a-h]~nav$/);
  fc.assert(
    fc.property(fc.array(fc.uniqueArray(line)), (rounds) => {
      let given: Readonly<Record<string, string>> = {};
      for (const lines of rounds) given = { ...given, ...nextLabels(given, lines) };
      expect(new Set(Object.values(given)).size).toBe(Object.keys(given).length);
    }),
  );
});
