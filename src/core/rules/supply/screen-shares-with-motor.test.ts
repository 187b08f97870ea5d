import { expect, test } from 'vitest';
import { screenSharesWithMotor } from './screen-shares-with-motor.ts';
import { subPanel, supplyFindings, withSupply } from './supply-case.test-helper.ts';

/** The radio made a unit of another kind, on one circuit with the display. */
const besideDisplay = (kind: string, drive = false) =>
  withSupply((_, __, boat) => {
    for (const sheet of boat.sheets) {
      if (sheet.id !== 'fixed-radio') continue;
      sheet.kind = kind;
      if (drive) sheet.drive = { type: 'linear', motorV: 12, runA: 5, peakA: 15 };
    }
  });

test.each(['thruster', 'windlass', 'pilot-computer', 'steering-drive'])('a screen on the circuit of a %s', (kind) => {
  expect(supplyFindings(screenSharesWithMotor, besideDisplay(kind))).toMatchObject([
    { level: 'fault', about: ['display', 'helm-circuit', 'main-panel'] },
  ]);
});

test('whatever has a drive is a motor, and a radio is none', () => {
  expect(supplyFindings(screenSharesWithMotor, besideDisplay('box', true))).toHaveLength(1);
  expect(supplyFindings(screenSharesWithMotor, besideDisplay('vhf-radio'))).toEqual([]);
});

test('the name of a circuit says what else is on it', () => {
  const named = (name: string) =>
    withSupply((_, panel) => {
      for (const circuit of panel.circuits) if (circuit.id === 'helm-circuit') circuit.name = name;
    });
  expect(supplyFindings(screenSharesWithMotor, named('Windlass and helm'))).toHaveLength(1);
  expect(supplyFindings(screenSharesWithMotor, named('Helm'))).toEqual([]);
});

test('on a small panel behind another the feeder is shared, a doubt; on the main panel it is not', () => {
  const apart = (from: string) =>
    withSupply((_, panel, boat) => {
      panel.from = from;
      panel.circuits = [
        { id: 'screen', ratingA: 5, kind: 'fuse', feeds: ['display.dc'] },
        { id: 'bow', name: 'bow thruster', ratingA: 100, kind: 'fuse', feeds: [] },
      ];
      boat.supply.panels.push(subPanel('root', 'house', ['main-panel']));
    });
  expect(supplyFindings(screenSharesWithMotor, apart('house'))).toEqual([]);
  expect(supplyFindings(screenSharesWithMotor, apart('root'))).toMatchObject([
    { level: 'doubt', about: ['bow', 'main-panel'] },
  ]);
});
