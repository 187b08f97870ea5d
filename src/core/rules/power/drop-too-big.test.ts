import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { dropTooBig } from './drop-too-big.ts';
import { aFeed } from './power-case.test-helper.ts';

const found = (over: Parameters<typeof aFeed>[0]) => findingsOf(dropTooBig, { plan: { feeds: [aFeed(over)] } });

test('3 % of 12 V is 0.36 V: more in a wire aboard is a doubt (ABYC E-11, second-hand)', () => {
  expect(found({ dropV: 0.36 })).toEqual([]);
  expect(found({ dropV: 0.37 })).toMatchObject([
    { level: 'doubt', measured: { value: 0.37, unit: 'V' }, limit: { value: 3 } },
  ]);
});

test('where the unit itself asks for the volts it is a fault', () => {
  expect(found({ dropV: 0.3, allowedV: 0.2, allowedBy: 'unit', leastV: 10.8 })).toMatchObject([
    { level: 'fault', limit: { value: 0.2, unit: 'V' }, says: expect.stringContaining('10.8 V its maker asks for') },
  ]);
});

test('so it is where the whole way leaves the unit short', () => {
  const [finding] = found({ dropV: 0.9, atEndV: 9.8, leastV: 10 });
  expect(finding).toMatchObject({ level: 'fault', says: expect.stringContaining('9.80 V of the 10 V it needs') });
});

test('a wire that was picked is not told of here', () => {
  expect(found({ wire: 'picked', dropV: 0.5 })).toEqual([]);
});

test('an owner may set the share, and the finding says so', () => {
  const { boat } = aBoat().with({ limits: { 'feed-drop': { value: 10, reason: 'lamps only' } } });
  const [finding] = findingsOf(dropTooBig, { boat, plan: { feeds: [aFeed({ dropV: 1.3, allowedV: 1.2 })] } });
  expect(finding).toMatchObject({ limit: { value: 10 } });
});
