import { expect, test } from 'vitest';
import { aBoat } from './boat/a-boat.test-helper.ts';
import { indexBoat } from './boat/boat-index.ts';
import type { Boat } from './boat/boat-schema.ts';
import { keptWithLaid, saidOfSources } from './kept-with-laid.ts';

const accepted: Boat['accepted'] = [{ finding: 'power/fuse-over-wire:a', reason: 'It is meant so.' }];

/** A part that tells what it was shown, and how often it was asked anew. */
const aPart = () => {
  const shown: Boat[] = [];
  const part = keptWithLaid(saidOfSources, (_: object, { boat }, phase) => {
    shown.push(boat);
    return `${phase}: ${boat.needs.length}`;
  });
  return { shown, part };
};

test('a part is kept while the boat lies as she does and says the same, whatever else is said of her', () => {
  const { shown, part } = aPart();
  const { boat } = aBoat();
  const lies = {};
  const wished = { ...boat, accepted, needs: boat.needs.map((need) => ({ ...need, must: !need.must })) };
  expect([part(lies, indexBoat(boat), 1), part(lies, indexBoat(wished), 1)]).toEqual([
    `1: ${boat.needs.length}`,
    `1: ${boat.needs.length}`,
  ]);
  expect(shown).toHaveLength(1);
  expect(part(lies, indexBoat({ ...boat, needs: boat.needs.slice(1) }), 1)).toBe(`1: ${boat.needs.length - 1}`);
  part(lies, indexBoat(boat), 2);
  part({}, indexBoat(boat), 1);
  expect(shown).toHaveLength(4);
});

test('a part is shown nothing that is not told of it', () => {
  const { shown, part } = aPart();
  part({}, indexBoat({ ...aBoat().boat, accepted, papers: {} }), 1);
  expect(Object.keys(shown[0] ?? {})).not.toEqual(expect.arrayContaining(['accepted']));
  expect(shown[0]?.papers).toBeUndefined();
});
