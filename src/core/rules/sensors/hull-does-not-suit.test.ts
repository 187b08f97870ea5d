import { expect, test } from 'vitest';
import { hullDoesNotSuit } from './hull-does-not-suit.ts';
import { sensorFindings } from './sensor-case.test-helper.ts';

test('solid laminate passes', () => {
  expect(sensorFindings(hullDoesNotSuit, { checks: [{ check: 'laminate', verdict: 'ok' }] })).toEqual([]);
});

test('a core is a fault, told apart from plastic in wood', () => {
  const [core] = sensorFindings(hullDoesNotSuit, { checks: [{ check: 'laminate', verdict: 'bad' }] });
  expect(core).toMatchObject({ level: 'fault', about: ['compass'] });
  expect(core?.cure).toContain('solid');
  const [wood] = sensorFindings(hullDoesNotSuit, { checks: [{ check: 'material', verdict: 'bad' }] });
  expect(wood?.cure).toContain('bronze');
});
