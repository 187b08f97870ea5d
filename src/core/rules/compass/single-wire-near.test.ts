import { expect, test } from 'vitest';
import { compassFindings } from './compass-case.test-helper.ts';
import { singleWireNear } from './single-wire-near.ts';

test('a pair passes', () => {
  expect(compassFindings(singleWireNear)).toEqual([]);
});

test('a single wire that turns the card more than 18/H degrees is refused with the deviation (ISO 25862, second-hand)', () => {
  const [finding] = compassFindings(singleWireNear, {
    feed: { laid: 'single', laidBy: 'file', fieldUt: 0.8, deviationDeg: 3.06, keepM: 1.3, tooNear: true },
  });
  expect(finding).toMatchObject({
    level: 'fault',
    about: ['card', 'display'],
    measured: { value: 3.06, unit: '°' },
    limit: { value: 1.2, unit: '°' },
  });
  expect(finding?.says).toMatch(
    /^The feed of Helm display passes steering compass at 0.50 m .* 3\.1°, where 1\.2° is allowed\.$/,
  );
  expect(finding?.cure).toContain('1.30 m');
});

test('CM-10 (ISO/DIS 25862 E.5, second-hand): within a metre it is refused however little it carries', () => {
  const feed = { laid: 'single', distanceM: 0.8 } as const;
  expect(compassFindings(singleWireNear, { feed })).toMatchObject([{ level: 'fault' }]);
});

test('farther off, one that turns it less is still to be laid as a pair: advice', () => {
  const feed = { laid: 'single', distanceM: 2 } as const;
  expect(compassFindings(singleWireNear, { feed })).toMatchObject([{ level: 'advice' }]);
});
