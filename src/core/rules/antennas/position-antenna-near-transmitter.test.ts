import { expect, test } from 'vitest';
import { antennaFindings, aSpacing } from './antenna-case.test-helper.ts';
import { positionAntennaNearTransmitter } from './position-antenna-near-transmitter.ts';

const found = (own: Parameters<typeof aSpacing>[0]) =>
  antennaFindings(positionAntennaNearTransmitter, { spacings: [aSpacing({ what: 'position', ...own })] });

test('five metres off it passes', () => {
  expect(found({ distanceM: 5 })).toEqual([]);
});

test('under five metres it is advice, under three a doubt', () => {
  expect(found({ distanceM: 4, verdict: 'advice', limitM: 5 })).toMatchObject([
    { level: 'advice', limit: { value: 5 } },
  ]);
  expect(found({ distanceM: 1.2, verdict: 'doubt', limitM: 3 })).toMatchObject([
    { level: 'doubt', limit: { value: 3 } },
  ]);
});
