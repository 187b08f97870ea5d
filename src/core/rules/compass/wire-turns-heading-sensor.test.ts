import { expect, test } from 'vitest';
import type { CompassFeed } from '../../compass-shape.ts';
import { headingFindings } from './heading-case.test-helper.ts';
import { wireTurnsHeadingSensor } from './wire-turns-heading-sensor.ts';

const feed: CompassFeed = {
  line: 'feed:display.supply~main-panel',
  to: 'display.dc',
  currentA: 5,
  distanceM: 0.2,
  laid: 'pair',
  laidBy: 'plan',
  fieldUt: 0.5,
  deviationDeg: 1.9,
  keepM: 0.3,
  tooNear: true,
};
const found = (own: Partial<CompassFeed>) => headingFindings(wireTurnsHeadingSensor, { feeds: [{ ...feed, ...own }] });

test('a feed that turns it less than a compass may be turned passes', () => {
  expect(found({ tooNear: false })).toEqual([]);
});

test('a pair that turns it more is a doubt, with the angle', () => {
  const [finding] = found({});
  expect(finding).toMatchObject({
    level: 'doubt',
    about: ['compass', 'display'],
    measured: { value: 1.9, unit: '°' },
    limit: { value: 1.2, unit: '°' },
  });
  expect(finding?.cure).toContain('0.30 m');
});

test('a single wire, or one of 20 A and more, is a fault', () => {
  expect(found({ laid: 'single' })).toMatchObject([{ level: 'fault' }]);
  expect(found({ currentA: 60 })).toMatchObject([{ level: 'fault' }]);
});
