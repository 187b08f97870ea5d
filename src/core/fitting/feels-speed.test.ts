import { expect, test } from 'vitest';
import { typicalSheets } from '../facts/sheets/index.ts';
import { feelsSpeed } from './feels-speed.ts';

const logs = (kind: string): string[] =>
  typicalSheets.filter((sheet) => sheet.kind === kind && feelsSpeed(sheet)).map(({ name }) => name);

test('a sensor in the hull that gives speed beside depth is a log, one that gives depth alone is none', () => {
  expect(logs('depth-sensor')).toContain('Through-hull sensor for depth, speed and temperature, for the bus, typical');
  expect(logs('depth-sensor')).not.toContain('Small digital depth sensor for the bus, in-hull, typical');
  expect([...logs('transducer'), ...logs('depth-sensor')]).toContain(
    'Through-hull transducer for depth, speed and temperature, analog, typical',
  );
});

test('a screen that shows speed is no log', () => {
  expect(logs('display')).toEqual([]);
  expect(logs('speed-sensor').length).toBeGreaterThan(0);
});
