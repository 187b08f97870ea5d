import { describe, expect, test } from 'vitest';
import { testDemoBoat } from './demo-boat.test-helper.ts';
import { testHandDrawnBus } from './hand-drawn-bus.test-helper.ts';
import { sandpiper, sandpiperTable } from './sandpiper.ts';

const boat = sandpiper();

describe('Sandpiper', () => {
  testDemoBoat({ id: 'sandpiper', boat, table: sandpiperTable() });

  test('has 23 places, 23 ways, 17 units, 16 kinds of sheet and 23 needs', () => {
    const counts = [boat.places, boat.ways, boat.kit, boat.sheets, boat.needs].map((list) => list.length);
    expect(counts).toEqual([23, 23, 17, 16, 23]);
  });
});

describe.each(sandpiperTable().goodDesign)(
  "Sandpiper's bus $bus: $trunkM m of trunk, $devices devices, LEN $len",
  (design) => {
    testHandDrawnBus(boat, design);
  },
);
