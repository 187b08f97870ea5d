import { describe, expect, test } from 'vitest';
import { bonxie, bonxieTable } from './bonxie.ts';
import { testDemoBoat } from './demo-boat.test-helper.ts';
import { testHandDrawnBus } from './hand-drawn-bus.test-helper.ts';

const boat = bonxie();

describe('Bonxie', () => {
  testDemoBoat({ id: 'bonxie', boat, table: bonxieTable() });

  test('has 63 places, 67 ways, 119 units, two buses and 102 needs', () => {
    const counts = [boat.places, boat.ways, boat.kit, boat.buses, boat.needs].map((list) => list.length);
    expect(counts).toEqual([63, 67, 119, 2, 102]);
  });
});

describe.each(bonxieTable().goodDesign)(
  "Bonxie's bus $bus: $trunkM m of trunk, $devices devices, LEN $len",
  (design) => {
    // Cut to length its drops would do; in the pieces that are sold they are too long together.
    const broken = design.bus === 'nav' ? ['All drops are 90 m as bought; the limit is 78 m.'] : [];
    testHandDrawnBus(boat, design, broken);
  },
);
