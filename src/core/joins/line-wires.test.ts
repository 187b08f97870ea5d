import { describe, expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Port } from '../boat/sheet.ts';
import { joinsOf } from './joins-of.ts';
import { lineWires } from './line-wires.ts';

type Line = NonNullable<Port['line']>;

/** The Tern's converter and radio with other kinds of line: the wires that join them, by role. */
const joined = ({ talker, listener, baud = 4800 }: { talker: Line; listener: Line; baud?: number }): string[] => {
  const boat = aBoat()
    .sheet('converter-0183', (sheet) => {
      const port = sheet.ports.find(({ id }) => id === 'out');
      if (port !== undefined) Object.assign(port, { line: talker, baud });
    })
    .sheet('fixed-radio', (sheet) => {
      const port = sheet.ports.find(({ id }) => id === 'gps-in');
      if (port !== undefined) Object.assign(port, { line: listener, baud });
    }).boat;
  const index = indexBoat(boat);
  const joins = joinsOf(index, 1).filter(({ id }) => id === 'radio-position');
  return lineWires(index, joins, ['converter.wires', 'radio.wires']).map(
    ({ from, to }) => `${from.role} ${from.label ?? '?'} > ${to === undefined ? 'open' : (to.label ?? '?')}`,
  );
};

describe('how pairs join, as public handbooks of 0183 agree (practice-0183-pairs)', () => {
  test('a pair to a pair: A to A and B to B', () => {
    expect(joined({ talker: 'differential', listener: 'differential' })).toEqual(['A A > A', 'B B > B']);
  });

  test('at 38400 baud the grounds are joined as well', () => {
    expect(joined({ talker: 'differential', listener: 'differential', baud: 38400 })).toEqual([
      'A A > A',
      'B B > B',
      'common ? > ?',
    ]);
  });

  test('a pair to a single wire: A to the signal, the grounds, and B stays open', () => {
    expect(joined({ talker: 'differential', listener: 'single-ended' })).toEqual([
      'A A > ?',
      'B B > open',
      'common ? > ?',
    ]);
  });

  test('a single wire to a pair: the signal to A, the ground to B', () => {
    expect(joined({ talker: 'single-ended', listener: 'differential' })).toEqual(['signal ? > A', 'common ? > B']);
  });

  test('RS-232 joined bare to a pair has no wires to follow', () => {
    expect(joined({ talker: 'rs232', listener: 'differential' })).toEqual([]);
    expect(joined({ talker: 'rs232', listener: 'rs232' })).toEqual(['signal ? > ?', 'common ? > ?']);
  });
});

test('wires are told by the marks and colours of both makers', () => {
  const index = indexBoat(aBoat().boat);
  const [first] = lineWires(index, joinsOf(index, 1), ['converter.wires', 'radio.wires']);
  expect(first).toEqual({
    from: { end: 'converter.wires', port: 'out', role: 'A', label: 'A', colour: 'white' },
    to: { end: 'radio.wires', port: 'gps-in', role: 'A', label: 'A', colour: 'white' },
  });
});

test('a line between other plugs has none of them', () => {
  const index = indexBoat(aBoat().boat);
  expect(lineWires(index, joinsOf(index, 1), ['gnss.bus', 'radio.wires'])).toEqual([]);
});
