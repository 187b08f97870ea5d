import { expect, test } from 'vitest';
import { checkLayout } from './check-layout.ts';
import { ladderBoat } from './ladder-boat.test-helper.ts';
import type { Problem } from './problem.ts';
import { solveLayout } from './solve-layout.ts';

/** Boats of one kind, what each costs at least, and the most work that the proofs for all of them may take together. */
interface Kind {
  readonly places: number;
  readonly devices: number;
  /** how many times the usual current each device draws */
  readonly times: number;
  /** by the seed of the boat, in the currency */
  readonly costs: Readonly<Record<number, number>>;
  readonly mostWork: number;
}

/**
 * The work is what the proofs took when the bounds were last looked at: with one that is lost or weaker they take more, with a
 * better one less, and then the figure may go down. The costs are those of that day: a bound too high would leave out the
 * cheapest.
 */
const kinds: readonly Kind[] = [
  {
    places: 12,
    devices: 8,
    times: 1,
    costs: { 0: 388.13, 1: 329.19, 2: 342.37, 3: 393.33, 4: 349.38, 5: 377.35, 6: 379.47, 7: 355.83 },
    mostWork: 2859,
  },
  {
    places: 10,
    devices: 14,
    times: 2,
    costs: { 0: 494.73, 1: 492.93, 2: 508.5, 3: 518.33, 4: 517.15 },
    mostWork: 2459,
  },
  { places: 14, devices: 16, times: 2, costs: { 0: 597.44, 1: 575.92, 2: 586.31, 3: 563.03 }, mostWork: 3032 },
  { places: 12, devices: 12, times: 3, costs: { 1: 430.51, 2: 479.43, 3: 513.28, 4: 459.06 }, mostWork: 9155 },
  { places: 10, devices: 12, times: 4, costs: { 0: 445.93, 1: 445.73, 2: 459.62, 4: 464.33 }, mostWork: 8734 },
];

const boatOf = ({ times, places, devices }: Kind, seed: number): Problem => {
  const boat = ladderBoat(seed, { places, devices });
  return { ...boat, devices: boat.devices.map((device) => ({ ...device, len: times * device.len })) };
};

test.each(kinds)(
  'boats of $places places with $devices devices of $times times the current are proven in no more work than they were',
  (kind) => {
    let work = 0;
    for (const [seed, cost] of Object.entries(kind.costs)) {
      const boat = boatOf(kind, Number(seed));
      const layout = [...solveLayout(boat, { work: 60_000 })].at(-1);
      expect({ seed, status: layout?.status, cost: (layout?.cost ?? 0) / 100_000 }).toEqual({
        seed,
        status: 'proven',
        cost,
      });
      expect(layout === undefined ? ['none'] : checkLayout(boat, layout).broken).toEqual([]);
      work += layout?.work ?? 0;
    }
    expect(work).toBeLessThanOrEqual(kind.mostWork);
  },
);
