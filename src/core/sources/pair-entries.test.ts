import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import type { Plug } from '../boat/sheet.ts';
import { joinsOf } from '../joins/joins-of.ts';
import { planBoat } from './pair-boat.test-helper.ts';
import { pairEntries } from './pair-entries.ts';

const pairsOf = (boat: Boat, shields: Parameters<typeof pairEntries>[0]['shields'] = []) => {
  const index = indexBoat(boat);
  return pairEntries({ index, joins: joinsOf(index, 1), lines: planBoat(boat).lines, shields });
};

test('a pair is told wire by wire by the marks of both makers, with its shield earthed at the talker only', () => {
  expect(pairsOf(aBoat().boat)).toEqual([
    {
      line: 'pair:converter.wires~radio.wires',
      kind: 'nmea0183',
      talker: { port: 'converter.out', plug: 'converter.wires' },
      listener: { port: 'radio.gps-in', plug: 'radio.wires' },
      baud: 4800,
      wires: [
        { from: { role: 'A', label: 'A', colour: 'white' }, to: { role: 'A', label: 'A', colour: 'white' } },
        { from: { role: 'B', label: 'B', colour: 'green' }, to: { role: 'B', label: 'B', colour: 'green' } },
      ],
      open: [],
      shieldAt: 'converter',
    },
  ]);
});

const spares: NonNullable<Plug['conductors']> = [
  { label: 'TX A', colour: 'brown', ports: ['second'], role: 'A' },
  { label: 'GND', colour: 'black', ports: ['gps-in'], role: 'common' },
  { label: 'n.c.', colour: 'grey', ports: [], role: 'spare' },
  { label: 'screen', colour: 'bare', ports: ['gps-in'], role: 'shield' },
];
const withSpares = (): Boat =>
  aBoat().sheet('fixed-radio', (sheet) => {
    sheet.plugs.find(({ id }) => id === 'wires')?.conductors?.push(...spares);
    const port = sheet.ports.find(({ id }) => id === 'gps-in');
    if (port !== undefined) sheet.ports.push({ ...port, id: 'second', role: 'talk' });
  }).boat;

test('wires that nothing is joined to stay open and insulated: of an unused port, of no port, and a ground that 4800 baud leaves off', () => {
  const [pair] = pairsOf(withSpares());
  expect(pair?.open).toEqual([
    { plug: 'radio.wires', role: 'A', label: 'TX A', colour: 'brown' },
    { plug: 'radio.wires', role: 'common', label: 'GND', colour: 'black' },
    { plug: 'radio.wires', role: 'spare', label: 'n.c.', colour: 'grey' },
  ]);
});

test('B of a pair that meets a single wire stays open, and is not told twice', () => {
  const boat = aBoat().sheet('fixed-radio', (sheet) => {
    const port = sheet.ports.find(({ id }) => id === 'gps-in');
    if (port !== undefined) port.line = 'single-ended';
    for (const wire of sheet.plugs.find(({ id }) => id === 'wires')?.conductors ?? [])
      if (wire.role === 'A' || wire.role === 'B') wire.role = wire.role === 'A' ? 'signal' : 'common';
  }).boat;
  const [pair] = pairsOf(boat);
  expect(pair?.wires).toEqual([
    { from: { role: 'A', label: 'A', colour: 'white' }, to: { role: 'signal', label: 'A', colour: 'white' } },
    { from: { role: 'B', label: 'B', colour: 'green' } },
    { from: { role: 'common' }, to: { role: 'common', label: 'B', colour: 'green' } },
  ]);
  expect(pair?.open).toEqual([]);
});

test('a shield that a unit earths already is not earthed at the talker as well', () => {
  const earths = [{ at: 'radio', by: 'unit' as const, says: 'on its minus' }];
  const [pair] = pairsOf(aBoat().boat, [
    { id: 'radio-position', of: ['radio-position'], kind: 'cable', earths, verdict: 'once' },
  ]);
  expect(pair?.shieldAt).toBe('radio');
});
