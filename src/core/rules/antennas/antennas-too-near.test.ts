import { expect, test } from 'vitest';
import { antennaFindings, aSpacing } from './antenna-case.test-helper.ts';
import { antennasTooNear } from './antennas-too-near.ts';

const found = (...spacings: Parameters<typeof aSpacing>[0][]) =>
  antennaFindings(antennasTooNear, { spacings: spacings.map(aSpacing) });

test('antennas far enough apart, and position antennas, are no matter of this rule', () => {
  expect(found({})).toEqual([]);
  expect(found({ what: 'position', verdict: 'doubt' })).toEqual([]);
});

test('between three and ten metres it is advice, with what arrives at the other set', () => {
  const [finding] = found({ distanceM: 3.3, verdict: 'advice', isolationDb: 20.7, coupledDbm: 23.3 });
  expect(finding).toMatchObject({ level: 'advice', measured: { value: 3.3 }, limit: { value: 10 } });
  expect(finding?.says).toContain('21 dB part them: 0.2 W');
});

test('under three metres it is a doubt, and an estimate is called one', () => {
  const [finding] = found({
    distanceM: 0.8,
    verdict: 'doubt',
    limitM: 3,
    isEstimate: true,
    isolationDb: 8,
    coupledDbm: 36,
  });
  expect(finding).toMatchObject({ level: 'doubt', limit: { value: 3 } });
  expect(finding?.says).toContain('an estimate');
});

test('of advice each antenna is spoken of once, for the nearest', () => {
  const all = found(
    { distanceM: 6, verdict: 'advice', other: 'converter' },
    { distanceM: 4, verdict: 'advice' },
    { distanceM: 2, verdict: 'doubt', other: 'converter', limitM: 3 },
  );
  expect(all.map(({ measured }) => measured?.value)).toEqual([2]);
});
