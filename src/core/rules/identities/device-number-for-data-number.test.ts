import { expect, test } from 'vitest';
import { type UnitSketch, wired } from '../../readings/wired.test-helper.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { deviceNumberForDataNumber } from './device-number-for-data-number.ts';

const tank = (instance: number, identity?: string): UnitSketch => ({
  ports: { n2k: { protocol: 'nmea2000', sends: [{ reading: 'fuel-level' }] } },
  kit: {
    instances: [{ port: 'n2k', reading: 'fuel-level', instance }],
    ...(identity === undefined ? {} : { identity }),
  },
});
const found = (port: UnitSketch, starboard: UnitSketch) =>
  findingsOf(deviceNumberForDataNumber, {
    boat: wired({ units: { port, starboard }, joins: { nav: ['port.n2k', 'starboard.n2k'] } }),
  });

// bits 32 to 39 of the NAME hold the device instance (MS-53 has the layout)
const device = (instance: number): string => `c050${'82'}${instance.toString(16).padStart(2, '0')}00200001`;

test('two tanks set apart by their device instance, with one data instance, are a doubt', () => {
  expect(found(tank(0, device(0)), tank(0, device(1)))).toMatchObject([
    {
      id: 'identities/device-number-for-data-number:port,starboard:fuel-level:0',
      level: 'doubt',
      says: expect.stringMatching(/^Port is device 0 and starboard is device 1, and both send fuel level 0\./),
    },
  ]);
});

test('data instances that differ pass, whatever the device instances are', () => {
  expect(found(tank(0, device(0)), tank(1, device(1)))).toEqual([]);
  expect(found(tank(0, device(0)), tank(1, device(0)))).toEqual([]);
});

test('of units whose NAME nobody has read nothing is said', () => {
  expect(found(tank(0), tank(0, device(1)))).toEqual([]);
});
