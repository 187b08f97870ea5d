import { expect, test } from 'vitest';
import { antennaFindings, aRun } from './antenna-case.test-helper.ts';
import { coaxLosesTooMuch } from './coax-loses-too-much.ts';

const found = (own: Parameters<typeof aRun>[0]) => antennaFindings(coaxLosesTooMuch, { coax: [aRun(own)] });

test('a run within its limit passes', () => {
  expect(found({})).toEqual([]);
});

test('new coax above three decibels is a fault of the design, above the aim advice', () => {
  const isNew = { use: 'new', judgedBy: 'sound' } as const;
  expect(found({ ...isNew, soundDb: 5.3, verdict: 'fault' })).toMatchObject([
    { level: 'fault', measured: { value: 5.3 }, limit: { value: 3, unit: 'dB' } },
  ]);
  expect(found({ ...isNew, soundDb: 2.5, verdict: 'advice' })).toMatchObject([
    { level: 'advice', limit: { value: 2.2 } },
  ]);
});

test('kept coax is a doubt with watts and range, and with what a bad antenna reads behind it', () => {
  const [finding] = found({
    weatheredDb: 3.3,
    weatheredW: 11.7,
    verdict: 'doubt',
    rangeShare: 0.83,
    faultReadsSwr: 1.6,
  });
  expect(finding).toMatchObject({ level: 'doubt', measured: { value: 3.3 }, limit: { value: 3 } });
  expect(finding?.says).toContain('11.7 W with weathered ones');
  expect(finding?.cure).toContain('83 %');
  expect(finding?.cure).toContain('reads 1.6 there, not 3');
});

test('a receiver has no watts to lose', () => {
  const { powerW: _, soundW: __, weatheredW: ___, ...run } = aRun({ verdict: 'doubt', weatheredDb: 3.4 });
  const [finding] = antennaFindings(coaxLosesTooMuch, { coax: [run] });
  expect(finding?.says).toContain('3.4 dB with weathered ones');
});
