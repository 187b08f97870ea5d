import { describe, expect, test } from 'vitest';
import { testDemoBoat } from './demo-boat.test-helper.ts';
import { gannet, gannetTable } from './gannet.ts';

const boat = gannet();

describe('Gannet', () => {
  testDemoBoat({ id: 'gannet', boat, table: gannetTable() });

  test('has 32 places, 33 ways, 44 units, 35 kinds of sheet and 56 needs', () => {
    const counts = [boat.places, boat.ways, boat.kit, boat.sheets, boat.needs].map((list) => list.length);
    expect(counts).toEqual([32, 33, 44, 35, 56]);
  });
});
