import type { Draft } from 'mutative';
import { expect, test } from 'vitest';
import { aBoat } from '../a-boat.test-helper.ts';
import { sentenceOf } from '../boat-problem.ts';
import type { Boat } from '../boat-schema.ts';
import { checkReferences } from '../check-references.ts';
import { placeInFile } from '../place-in-file.ts';

test.each<[string, (sheet: Draft<Boat['sheets'][number]>) => void, string]>([
  [
    'two ports of one id',
    (sheet) => sheet.ports.push({ id: 'n2k', onPlug: 'bus', protocol: 'nmea2000', role: 'both' }),
    'sheets[0].ports[2].id: Two ports of this sheet have the id "n2k".',
  ],
  [
    'two plugs of one id',
    (sheet) => sheet.plugs.push({ id: 'bus', connector: 'leads', gender: 'none' }),
    'sheets[0].plugs[2].id: Two plugs of this sheet have the id "bus".',
  ],
  [
    'a port on a plug that is not there',
    (sheet) => sheet.ports.push({ id: 'x', onPlug: 'wirse', protocol: 'nmea0183', role: 'talk' }),
    'sheets[0].ports[2].onPlug: The sheet "converter-0183" has no plug "wirse"; did you mean `wires`?',
  ],
  [
    'a port on no plug',
    (sheet) => sheet.ports.push({ id: 'x', protocol: 'nmea0183', role: 'talk' }),
    'sheets[0].ports[2]: The port "x" is on no plug; only a wifi port may be.',
  ],
  [
    'a turn to a port that is not there',
    (sheet) => sheet.turns?.push({ fromPort: 'n2k', toPort: 'outt', carries: [] }),
    'sheets[0].turns[1].toPort: The sheet "converter-0183" has no port "outt"; did you mean `out`?',
  ],
  [
    'a network of ports that are not there',
    (sheet) => {
      sheet.together = [['n2k', 'lan']];
    },
    'sheets[0].together[0][1]: The sheet "converter-0183" has no port "lan".',
  ],
  [
    'an in-line port that is not there',
    (sheet) => {
      sheet.inLine = ['n2k', 'n3k'];
    },
    'sheets[0].inLine[1]: The sheet "converter-0183" has no port "n3k"; did you mean `n2k`?',
  ],
  [
    'a wire to a port that is not there',
    (sheet) => {
      sheet.plugs[1]?.conductors?.push({ label: 'X', colour: 'red', ports: ['in'], role: 'spare' });
    },
    'sheets[0].plugs[1].conductors[2].ports[0]: The sheet "converter-0183" has no port "in".',
  ],
  [
    'power at a port that takes none',
    (sheet) => {
      sheet.power?.push({ port: 'out', typical: 1, max: 1, unit: 'A', behaves: 'current', minV: 9, maxV: 16 });
    },
    'sheets[0].power[1].port: No unit takes its power from nmea0183, and the port "out" is that.',
  ],
  [
    'more power at most than usually',
    (sheet) => {
      sheet.power?.push({ port: 'n2k', typical: 2, max: 1, unit: 'A', behaves: 'current', minV: 9, maxV: 16 });
    },
    'sheets[0].power[1].typical: The typical 2 A is more than the most, 1 A.',
  ],
  [
    'a least voltage above the highest',
    (sheet) => {
      sheet.power?.push({ port: 'n2k', typical: 1, max: 1, unit: 'A', behaves: 'current', minV: 19, maxV: 16 });
    },
    'sheets[0].power[1].minV: The least voltage, 19 V, is above the highest, 16 V.',
  ],
  [
    'a sentence on an analog port',
    (sheet) =>
      sheet.ports.push({ id: 'x', onPlug: 'wires', protocol: 'analog', role: 'talk', sends: [{ sentence: 'DPT' }] }),
    'sheets[0].ports[2].sends[0]: The analog port "x" carries readings only, no PGN and no sentence.',
  ],
  [
    'a PGN on an engine bus port',
    (sheet) =>
      sheet.ports.push({ id: 'x', onPlug: 'wires', protocol: 'engine-can', role: 'listen', hears: [{ pgn: 127488 }] }),
    'sheets[0].ports[2].hears[0]: The engine-can port "x" carries readings only, no PGN and no sentence.',
  ],
  [
    'an RS-232 port that goes both ways',
    (sheet) => sheet.ports.push({ id: 'x', onPlug: 'wires', protocol: 'nmea0183', line: 'rs232', role: 'both' }),
    'sheets[0].ports[2].role: The NMEA 0183 port "x" is rs232 and cannot go both ways; each of its wires has one direction.',
  ],
])('a sheet with %s is refused', (_, recipe, expected) => {
  const boat = aBoat().sheet('converter-0183', (sheet) => {
    recipe(sheet);
  }).boat;
  expect(checkReferences(boat).map((problem) => `${placeInFile(problem.path)}: ${sentenceOf(problem)}`)).toEqual([
    expected,
  ]);
});

test.each<[string, NonNullable<Boat['kit'][number]['changes']>, string]>([
  [
    'of an unknown name',
    [{ path: 'ports.n2k.lenn', value: 3, how: 'seen' }],
    'kit[0].changes[0].path: There is no `lenn` in `ports.n2k`; did you mean `len`?',
  ],
  [
    'at a port that is not there',
    [{ path: 'ports.n3k.len', value: 3, how: 'seen' }],
    'kit[0].changes[0].path: There is no `n3k` in `ports`; did you mean `n2k`?',
  ],
  [
    'of a message that is not sent',
    [{ path: 'ports.n2k.sends.128267.everyMs', value: 3, how: 'seen' }],
    'kit[0].changes[0].path: There is no `128267` in `ports.n2k.sends`.',
  ],
  [
    'inside what the sheet does not have',
    [{ path: 'body.widthMm', value: 3, how: 'seen' }],
    'kit[0].changes[0].path: The sheet "heading-sensor" has no `body` to change a part of.',
  ],
  [
    'to a value that cannot be',
    [{ path: 'ports.n2k.len', value: -3, how: 'seen' }],
    'kit[0].changes: With these changes the sheet no longer holds, at ports[0].len: `len` is -3; it must be at least 0.',
  ],
  [
    'that takes out what must be there',
    [{ path: 'ports.n2k.protocol', how: 'seen' }],
    'kit[0].changes: With these changes the sheet no longer holds, at ports[0].protocol: `protocol` is missing.',
  ],
  [
    'of an id',
    [{ path: 'ports.n2k.id', value: 'bus', how: 'seen' }],
    'kit[0].changes[0].path: An id cannot be changed for one unit.',
  ],
  [
    'of something built in',
    [{ path: 'constructor', value: 1, how: 'seen' }],
    'kit[0].changes[0].path: There is no `constructor` in the sheet "heading-sensor".',
  ],
])('a change %s is refused', (_, changes, expected) => {
  const { boat } = aBoat().unit('compass', { changes });
  expect(checkReferences(boat).map((problem) => `${placeInFile(problem.path)}: ${sentenceOf(problem)}`)).toEqual([
    expected,
  ]);
});

test('a change that the sheet has room for holds, also where the sheet was silent', () => {
  const { boat } = aBoat().unit('compass', {
    changes: [
      { path: 'ports.n2k.len', value: 3, how: 'seen' },
      { path: 'ports.n2k.sends.127257.everyMs', value: 200, how: 'recording' },
      { path: 'ports.n2k.sends.127251', how: 'recording' },
      { path: 'body', value: { widthMm: 60, heightMm: 60 }, how: 'manual' },
      { path: 'body.widthMm', value: 61, how: 'seen' },
    ],
  });
  expect(checkReferences(boat)).toEqual([]);
});
