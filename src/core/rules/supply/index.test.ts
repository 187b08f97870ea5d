import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Boat } from '../../boat/boat-schema.ts';
import { supplyRules } from './index.ts';
import { exactly, supplyFindings, withSupply } from './supply-case.test-helper.ts';

const ids = ['p0', 'p1', 'p2', 'house', 'engine', 'conv', 'none'];
const size = fc.oneof(fc.constantFrom(0.001, 1e4), fc.double({ min: 0.001, max: 1e4, noNaN: true }));
const panel = fc.record({
  from: fc.constantFrom(...ids),
  mainA: fc.option(size, { nil: undefined }),
  tapV: fc.option(fc.constantFrom(6, 12), { nil: undefined }),
  farM: fc.option(fc.double({ min: 0, max: 1000, noNaN: true }), { nil: undefined }),
  feeds: fc.subarray([...ids, 'display.dc', 'radio.dc', 'display.n2k', 'nav', 'gone.dc']),
});

/** A supply as nobody wires one: rings, converters that feed themselves, nothing known, nought and huge. */
const strange = fc.record({
  panels: fc.array(panel, { maxLength: 3 }),
  nominalV: fc.constantFrom(0.001, 12, 24, 1000),
  crankingA: fc.option(size, { nil: undefined }),
  ratedA: size,
  partedBy: fc.constantFrom('nothing' as const, 'relay' as const, 'dcdc' as const, undefined),
  main: fc.constantFrom('none' as const, 'fuse' as const, undefined),
});

type Strange = typeof strange extends fc.Arbitrary<infer Value> ? Value : never;

const boatOf = ({ panels, nominalV, crankingA, ratedA, partedBy, main }: Strange): Boat =>
  withSupply((bank, _, boat) => {
    Object.assign(bank, {
      nominalV,
      ...(crankingA === undefined ? {} : { coldCrankingA: crankingA, shortCircuitA: crankingA }),
      ...(main === undefined ? {} : { main: { kind: main } }),
    });
    boat.supply.banks.push({
      ...bank,
      id: 'engine',
      for: 'start',
      nominalV: 12,
      ...(partedBy === undefined ? {} : { partedBy }),
    });
    boat.supply.dcdc.push({ id: 'conv', place: 'helm', outV: nominalV, ratedA, efficiencyPct: 1, isolated: false });
    boat.supply.chargers = [{ id: 'charger', place: 'helm', kind: 'wind', charges: ['house', 'engine'] }];
    boat.supply.panels = panels.map(({ from, mainA, tapV, farM, feeds }, at) => ({
      id: `p${at}`,
      place: 'helm',
      from,
      ...(mainA === undefined ? {} : { mainA, feeder: { length: exactly(mainA / 10), areaMm2: mainA / 10 } }),
      ...(tapV === undefined ? {} : { tapV }),
      ...(farM === undefined ? {} : { main: { kind: 'fuse' as const, distance: exactly(farM) } }),
      circuits: [{ id: `c${at}`, ratingA: ratedA, kind: 'fuse', feeds, interruptA: 1 }],
    }));
  });

test.each(supplyRules.map((rule) => [rule.id, rule] as const))(
  '%s stands any supply, and says it in words',
  (_, rule) => {
    fc.assert(
      fc.property(strange, (supply) => {
        for (const { says, cure = '', rule: by } of supplyFindings(rule, boatOf(supply))) {
          expect(by, 'the rule broke down').toBe(rule.id);
          expect(`${says} ${cure}`).not.toMatch(/NaN|undefined|null|Infinity|\[object/);
        }
      }),
      { numRuns: 40 },
    );
  },
);
