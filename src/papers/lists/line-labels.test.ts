import { expect, test } from 'vitest';
import { labelsText, lineLabels } from './line-labels.ts';

test('every line has a label of its own, and a label of the boat file is never given again', () => {
  const lines = [{ id: 'drop:a' }, { id: 'drop:b', label: 'C01' }, { id: 'feed:c' }, { id: 'coax:d', label: 'VHF-1' }];
  expect([...lineLabels({ lines })]).toEqual([
    ['drop:a', 'C02'],
    ['drop:b', 'C01'],
    ['feed:c', 'C03'],
    ['coax:d', 'VHF-1'],
  ]);
});

test('a boat of more than 99 lines has three digits in every label, so that they sort', () => {
  const lines = Array.from({ length: 100 }, (_, at) => ({ id: `line ${at}` }));
  const labels = [...lineLabels({ lines }).values()];
  expect([labels[0], labels[99]]).toEqual(['C001', 'C100']);
});

test('runs of three labels and more are shortened', () => {
  expect(labelsText(['C09', 'C03', 'C04', 'C05', 'C06', 'C10'])).toBe('C03–C06, C09, C10');
  expect(labelsText(['VHF-1', 'C07', 'C07'])).toBe('C07, VHF-1');
});
