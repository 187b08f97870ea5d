import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Port } from '../../boat/sheet.ts';
import { joinsOf } from '../../joins/joins-of.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { lineKindsMeet } from './line-kinds-meet.ts';

type Line = NonNullable<Port['line']>;
const found = (talks: Line, listens: Line) => {
  const set = (line: Line) => (sheet: { ports: { protocol: string; line?: Line }[] }) => {
    for (const port of sheet.ports) if (port.protocol === 'nmea0183') port.line = line;
  };
  const boat = aBoat().sheet('converter-0183', set(talks)).sheet('fixed-radio', set(listens)).boat;
  const joins = joinsOf(indexBoat(boat), 1).map((join) => ({ ...join, lines: [] }));
  return findingsOf(lineKindsMeet, { boat, plan: { joins } });
};

test('two pairs, two single wires and two RS-232 ports pass', () => {
  for (const line of ['differential', 'single-ended', 'rs232'] as const) expect(found(line, line)).toEqual([]);
});

test('a pair on a single wire is advice that says B stays open and insulated', () => {
  const [finding] = found('differential', 'single-ended');
  expect(finding).toMatchObject({ level: 'advice', about: ['converter.out', 'radio-position', 'radio.gps-in'] });
  expect(finding?.cure).toMatch(/A to signal.*leave B open and insulated/);
});

test('a single wire on a pair is advice that says where both wires go', () => {
  expect(found('single-ended', 'differential')[0]?.cure).toMatch(/signal to A, talker 0 V to B/);
});

test('RS-232 joined bare to a pair is a fault, either way round', () => {
  expect(found('rs232', 'differential')).toMatchObject([{ level: 'fault' }]);
  expect(found('differential', 'rs232')).toMatchObject([{ level: 'fault' }]);
});
