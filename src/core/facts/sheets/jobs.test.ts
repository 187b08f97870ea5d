import { describe, expect, test } from 'vitest';
import type { Sheet } from '../../boat/sheet.ts';
import { typicalSheets } from './index.ts';

const talksOver =
  (...protocols: string[]) =>
  ({ ports }: Sheet): boolean =>
    protocols.every((protocol) => ports.some((port) => port.protocol === protocol));
const ofKind =
  (kind: string, name = /./) =>
  (sheet: Sheet): boolean =>
    sheet.kind === kind && name.test(sheet.name);
const isDrive =
  (type: string) =>
  ({ drive }: Sheet): boolean =>
    drive?.type === type;
const both =
  (...each: ((sheet: Sheet) => boolean)[]) =>
  (sheet: Sheet): boolean =>
    each.every((holds) => holds(sheet));

/** What is done aboard a small craft, and how to know a sheet that does it. */
const jobs: [string, (sheet: Sheet) => boolean][] = [
  ...[5, 7, 9, 10, 12, 16, 22, 24].map((inches): [string, (sheet: Sheet) => boolean] => [
    `a display of ${inches} inches`,
    ofKind('display', new RegExp(`^${inches}-inch`)),
  ]),
  ['an instrument head on the bus', both(ofKind('instrument'), talksOver('nmea2000'))],
  ['a solid-state radar dome', ofKind('radar', /solid-state dome/)],
  ['a solid-state open array', ofKind('radar', /Open-array solid-state/)],
  ['an old magnetron dome', ofKind('radar', /Old .* magnetron dome/)],
  ['an old magnetron open array', ofKind('radar', /Old .* magnetron .*open array/)],
  ['AIS class A', ofKind('ais', /class A/)],
  ['AIS class B', ofKind('ais', /class B/)],
  ['a VHF radio without AIS', ofKind('vhf-radio', /^(?!.*AIS)/)],
  ['a VHF radio with AIS', ofKind('vhf-radio', /AIS/)],
  ['a second handset', ofKind('vhf-handset')],
  ['a position antenna', both(ofKind('position-antenna'), talksOver('nmea2000'))],
  ['a heading sensor', both(ofKind('heading-sensor', /9-axis/), talksOver('nmea2000'))],
  ['a gyro', ofKind('heading-sensor', /Gyro/)],
  ['a pilot computer on the bus', both(ofKind('pilot-computer'), talksOver('nmea2000'))],
  ['a pilot computer on 0183', both(ofKind('pilot-computer'), talksOver('nmea0183'))],
  ['a pilot head', ofKind('pilot-head')],
  ['a tiller pilot', ofKind('pilot', /Tiller/)],
  ['a wheel pilot', ofKind('pilot', /Wheel/)],
  ...['reversing-pump', 'constant-pump', 'linear', 'wheel', 'tiller', 'stern-drive'].map(
    (type): [string, (sheet: Sheet) => boolean] => [`a steering drive: ${type}`, isDrive(type)],
  ),
  ['a rudder sensor, digital', both(ofKind('rudder-sensor'), talksOver('nmea2000'))],
  ['a rudder sensor, analog', both(ofKind('rudder-sensor'), talksOver('analog'))],
  ['a wind sensor, digital', both(ofKind('wind-sensor'), talksOver('nmea2000'))],
  ['a wind sensor, analog', both(ofKind('wind-sensor'), talksOver('analog'))],
  ['a masthead unit with the terminator in it', both(ofKind('wind-sensor'), ({ terminator }) => terminator === true)],
  ['a depth sensor, digital', both(ofKind('depth-sensor'), talksOver('nmea2000'))],
  ['a depth transducer, analog', both(ofKind('transducer', /depth/), talksOver('analog'))],
  ['a speed sensor, digital', both(ofKind('speed-sensor'), talksOver('nmea2000'))],
  ['a speed sensor, analog', both(ofKind('speed-sensor'), talksOver('analog'))],
  ['a temperature sensor, digital', both(ofKind('temperature-sensor'), talksOver('nmea2000'))],
  ['a temperature sensor, analog', both(ofKind('temperature-sensor'), talksOver('analog'))],
  ['a transducer for depth, speed and temperature', ofKind('transducer', /depth, speed and temperature/)],
  ['a converter from analog', both(ofKind('converter'), talksOver('analog', 'nmea2000'))],
  ['a converter from 0183', both(ofKind('converter'), talksOver('nmea0183', 'nmea2000'))],
  ['a converter from a single wire', both(ofKind('converter'), talksOver('single-wire', 'nmea2000'))],
  ['a multiplexer with a bus port', both(ofKind('multiplexer'), talksOver('nmea0183', 'nmea2000'))],
  ['a bus on the network', both(ofKind('gateway'), talksOver('nmea2000', 'ethernet'))],
  ['a bus on wifi', both(ofKind('gateway'), talksOver('nmea2000', 'wifi'))],
  [
    'a bridge of two buses',
    both(ofKind('gateway'), ({ ports }) => ports.filter(({ protocol }) => protocol === 'nmea2000').length === 2),
  ],
  ['a network switch', both(ofKind('network-switch'), talksOver('ethernet'))],
  ['a router', ofKind('router')],
  ['a satellite internet terminal', ofKind('satellite-terminal')],
  ['a sounder module', ofKind('sounder', /module/)],
  ['an engine gateway', both(ofKind('gateway'), talksOver('engine-can', 'nmea2000'))],
  ['gearbox oil on the bus', ofKind('converter', /gearbox/)],
  ['a tank monitor', ofKind('tank-adapter')],
  ['a battery monitor', ofKind('battery-monitor')],
  ['an inverter with a link', both(ofKind('inverter'), ({ ports }) => ports.some(({ protocol }) => protocol !== 'dc'))],
  ['a charger with a link', both(ofKind('charger'), ({ ports }) => ports.some(({ protocol }) => protocol !== 'dc'))],
  ['digital switching', ofKind('power-control')],
  ['audio with zones', ofKind('audio', /zones/)],
  ['a camera', ofKind('camera')],
  ['a weather receiver', ofKind('weather-receiver')],
  ['a computer', ofKind('computer')],
  ['an old instrument on a single wire', both(ofKind('instrument'), talksOver('single-wire'))],
  ['an old instrument on 0183', both(ofKind('instrument'), talksOver('nmea0183'))],
  ['a distress beacon', ofKind('beacon')],
  ['an MF/HF radio', ofKind('mfhf-radio')],
];

describe('a small craft needs', () => {
  test.each(jobs)('%s, and there is a typical sheet for it', (_job, does) => {
    expect(typicalSheets.filter(does)).not.toEqual([]);
  });
});
