import { describe, expect, test } from 'vitest';
import { deviceKind } from './device-kinds.ts';

describe('what a device is', () => {
  test.each([
    [60, 145, 'position sensor'],
    [40, 160, 'heading sensor'],
    [60, 136, 'depth, speed and temperature sensor'],
    [85, 130, 'wind and weather sensor'],
    [120, 130, 'display'],
    [70, 190, 'VHF radio'],
  ])('class %i, function %i is a %s (CANboat PGN database 6.2.0)', (classCode, functionCode, words) => {
    expect(deviceKind({ classCode, functionCode }, []).words).toBe(words);
  });

  test('an unknown function is told by its class, and that by nothing it sends', () => {
    expect(deviceKind({ classCode: 60, functionCode: 99 }, [130_306]).words).toBe('navigation unit');
  });

  test('a sender without a NAME is told by what it sends', () => {
    expect(deviceKind(undefined, [129_025, 127_250]).words).toBe('position sensor');
    expect(deviceKind(undefined, [130_822]).words).toBe('unknown device');
  });
});
