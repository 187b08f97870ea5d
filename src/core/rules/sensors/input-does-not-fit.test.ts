import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { inputDoesNotFit } from './input-does-not-fit.ts';
import { sensorFindings } from './sensor-case.test-helper.ts';

const input = { port: 'compass.out', at: 'converter.in', unknown: [] };

test('what fits, or is not known, passes', () => {
  expect(sensorFindings(inputDoesNotFit, { inputs: [{ ...input, misfits: [], unknown: ['power'] }] })).toEqual([]);
});

test('another frequency is a fault by manuals and a doubt by typical sheets', () => {
  const misfits = [{ what: 'frequency' as const, gives: '50 kHz', takes: '200 kHz' }];
  const byManual = aBoat().boat.sheets.reduce(
    (builder, { id }) =>
      builder.sheet(id, (sheet) => {
        sheet.source = 'manual';
      }),
    aBoat(),
  );
  const [fault] = sensorFindings(inputDoesNotFit, { inputs: [{ ...input, misfits }], boat: byManual.boat });
  expect(fault).toMatchObject({ level: 'fault', about: ['compass', 'converter'] });
  expect(fault?.says).toContain('the element works at 50 kHz, the input at 200 kHz');
  const typical = byManual.sheet('converter-0183', (sheet) => {
    sheet.source = 'typical';
  });
  expect(sensorFindings(inputDoesNotFit, { inputs: [{ ...input, misfits }], boat: typical.boat })).toMatchObject([
    { level: 'doubt' },
  ]);
});
