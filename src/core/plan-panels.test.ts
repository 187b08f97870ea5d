import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { aBoat } from './boat/a-boat.test-helper.ts';
import { indexBoat } from './boat/boat-index.ts';
import type { Boat } from './boat/boat-schema.ts';
import { canonicalBoat } from './boat/canonical-boat.ts';
import type { Bank, Panel } from './boat/supply.ts';
import { joinsOf } from './joins/joins-of.ts';
import { panelsEntriesSchema } from './panels-shape.ts';
import { planPanels } from './plan-panels.ts';

const planned = (boat: Boat) => {
  const index = indexBoat(canonicalBoat(boat));
  return planPanels({ index, joinsAt: (phase) => joinsOf(index, phase) });
};
const near = (valueM: number) => ({ valueM, how: 'taped', lessM: 0, moreM: 0 }) as const;

/** The Tern with her one bank and panel changed. */
const withSupply = (change: (bank: Bank, panel: Panel, boat: Boat) => void): Boat =>
  aBoat().change((draft) => {
    const [bank] = draft.supply.banks;
    const [panel] = draft.supply.panels;
    if (bank !== undefined && panel !== undefined) change(bank as Bank, panel as Panel, draft as Boat);
  }).boat;

const panelOf = (boat: Boat, id = 'main-panel') => {
  const found = planned(boat).panels.find(({ panel }) => panel === id);
  if (found === undefined) throw new Error(`There is no panel ${id}.`);
  return found;
};

describe('a panel', () => {
  it('has the drop of its feeder at its main rating: 30 A over 3.1 m of 16 mm² copper lose 0.2 V, 1.67 % of 12 V', () => {
    const { feeder } = panelOf(aBoat().boat);
    expect(feeder?.dropV).toBeCloseTo((2 * 3.1 * 0.017241 * 30) / 16, 3);
    expect(feeder?.dropPct).toBeCloseTo(1.67, 2);
    // metric table, 16 mm² of 90 °C: 100 A
    expect(feeder).toMatchObject({ ampacityA: 100, dropAtA: 30, engineSpace: false });
  });

  it('draws what hangs on it, each circuit with its units', () => {
    const { circuits, mostA } = panelOf(aBoat().boat);
    // 18 W at the lowest 10 V and 6 A
    expect(circuits.find(({ circuit }) => circuit === 'helm-circuit')).toMatchObject({ mostA: 7.8, free: false });
    expect(mostA).toBeCloseTo(
      circuits.reduce((sum, entry) => sum + entry.mostA, 0),
      9,
    );
  });

  it('must break what ABYC E-11 table V-A (second-hand) asks behind its bank: PW-57, 1800 CCA, 5000 A at the main', () => {
    const boat = withSupply((bank, panel) => {
      bank.coldCrankingA = 1800;
      panel.main = { kind: 'fuse', family: 'blade', distance: near(0.1) };
    });
    expect(panelOf(boat)).toMatchObject({
      branchA: 2500,
      main: { neededA: 5000, neededBy: 'table', givenA: 1000, breaks: 'no', farMm: 100, allowedMm: 178 },
    });
  });

  it('says that a figure is missing where nobody has said the cranking amperes of its bank', () => {
    expect(panelOf(aBoat().boat)).toMatchObject({ branchA: 750, main: { neededA: 1500, neededBy: 'no-figure' } });
  });

  it('has a short of what its bank gives less the feeder at its shortest', () => {
    const boat = withSupply((bank) => {
      bank.shortCircuitA = 3000;
    });
    const ohm = (2 * 2.95 * 0.017241) / 16;
    expect(panelOf(boat).faultA).toBeCloseTo(12 / (12 / 3000 + ohm), 0);
  });

  it('may have its main farther from the source in a sheath, by 33 CFR 183.455(b)(2)', () => {
    const boat = withSupply((_, panel) => {
      panel.main = { kind: 'fuse', distance: near(1), sheathed: true };
    });
    expect(panelOf(boat).main).toMatchObject({ farMm: 1000, allowedMm: 1016 });
  });
});

describe('what guards a feeder', () => {
  it('is the main of the bank, for a main of the panel may sit at its far end', () => {
    const boat = withSupply((bank, panel) => {
      bank.main = { kind: 'fuse', distance: near(0.1), ratingA: 100 };
      panel.main = { kind: 'breaker', distance: near(3) };
    });
    expect(panelOf(boat)).toMatchObject({ guardA: 100, guardBy: 'bank-main' });
  });

  it('is the main of the panel where that is smaller and stands at the source', () => {
    const boat = withSupply((bank, panel) => {
      bank.main = { kind: 'fuse', distance: near(0.1), ratingA: 100 };
      panel.main = { kind: 'fuse', distance: near(0.15) };
    });
    expect(panelOf(boat)).toMatchObject({ guardA: 30, guardBy: 'panel-main' });
  });

  it('is the circuit above, or else whatever guards the panel above', () => {
    const withSub = (feeds: readonly string[]): Boat =>
      withSupply((_, panel, boat) => {
        panel.circuits.push({ id: 'sub-circuit', ratingA: 10, kind: 'fuse', feeds: [...feeds] });
        boat.supply.panels.push({ id: 'sub', place: 'helm', from: 'main-panel', circuits: [] });
      });
    expect(panelOf(withSub(['sub']), 'sub')).toMatchObject({ guardA: 10, guardBy: 'circuit' });
    expect(panelOf(withSub([]), 'sub')).toMatchObject({ guardA: 30, guardBy: 'panel-above' });
  });

  it('is nothing where there is neither', () => {
    const boat = withSupply((bank, panel) => {
      bank.main = { kind: 'none' };
      delete panel.mainA;
    });
    expect(panelOf(boat)).not.toHaveProperty('guardA');
  });
});

describe('the circuits left', () => {
  const unfed = (freeWays?: number): Boat =>
    withSupply((_, panel) => {
      for (const circuit of panel.circuits) if (circuit.id === 'helm-circuit') circuit.feeds = ['display.dc'];
      if (freeWays !== undefined) panel.freeWays = freeWays;
    });

  it('are counted against what wants one, and what is short would take a fuse block', () => {
    const short = panelOf(unfed(0));
    expect(short.room).toEqual([{ phase: 1, free: 0, wanted: ['radio.dc'], short: 1 }]);
    // 1.25 x 6 A: PW-51's step of 7.5 A, and a place for the radio and for what the block's circuit fed
    expect(short.takes).toEqual({ circuits: 2, feedA: 7.5 });
    expect(panelOf(unfed(1))).toMatchObject({ room: [{ free: 1, short: 0 }] });
  });

  it('are not known to be short where nobody has counted the free places', () => {
    expect(panelOf(unfed()).room).toEqual([{ phase: 1, free: 0, wanted: ['radio.dc'] }]);
  });

  it('are set free in the phase in which all that they feed has left, and by a circuit kept as spare', () => {
    const boat = withSupply((_, panel, own) => {
      for (const unit of own.kit) {
        if (unit.id === 'radio') Object.assign(unit, { fate: 'goes', phase: 2 });
        if (unit.id === 'gnss') unit.phase = 2;
      }
      panel.circuits = [
        { id: 'old', ratingA: 10, kind: 'fuse', feeds: ['radio.dc'] },
        { id: 'kept', name: 'spare', ratingA: 10, kind: 'fuse', feeds: [] },
        { id: 'lights', name: 'navigation lights', ratingA: 10, kind: 'fuse', feeds: [] },
      ];
    });
    expect(panelOf(boat).room.map(({ free }) => free)).toEqual([1, 2]);
  });

  it('are wanted at the nearest panel whose volts the unit stands, and at none where there is no such panel', () => {
    const at24 = withSupply((bank, panel) => {
      bank.nominalV = 24;
      panel.circuits = [];
    });
    const { panels, noPanel } = planned(at24);
    expect(panels[0]?.room[0]?.wanted).toEqual([]);
    expect(noPanel).toEqual([{ phase: 1, wanted: ['display.dc', 'nav', 'radio.dc'] }]);
  });
});

describe('a bank', () => {
  const withStart = (partedBy: 'relay' | 'dcdc'): Boat =>
    withSupply((bank, _, boat) => {
      Object.assign(bank, { for: 'house', coldCrankingA: 600, shortCircuitA: 2000, chemistry: 'lifepo4' });
      boat.supply.banks.push({
        id: 'engine',
        place: 'battery-box',
        chemistry: 'flooded',
        nominalV: 12,
        capacityAh: 70,
        for: 'start',
        coldCrankingA: 600,
        shortCircuitA: 1500,
        partedBy,
      });
      boat.supply.chargers = [{ id: 'shore', place: 'locker', kind: 'mains', charges: ['house'] }];
    });

  it('feeds a short together with the one a relay joins it to, and alone behind a converter', () => {
    const [engine, house] = planned(withStart('relay')).banks;
    expect(house).toMatchObject({ crankingA: 1200, with: ['engine'], main: { neededA: 20_000, neededBy: 'lithium' } });
    expect(engine).toMatchObject({ crankingA: 1200, cranks: true });
    expect(planned(withStart('dcdc')).banks[1]).toMatchObject({ crankingA: 600, with: [] });
  });

  it('says what charges it, what it serves, and which cautions stand at it', () => {
    const { banks, mains } = planned(withStart('relay'));
    expect(banks[1]).toMatchObject({
      chargers: [{ charger: 'shore', kind: 'mains' }],
      serves: ['main-panel'],
      cautions: ['battery-short', 'lithium', 'ac', 'stray'],
    });
    expect(mains).toEqual({ chargers: ['shore'], ways: [] });
  });
});

describe('a converter', () => {
  const behind = (feeds: string[]): Boat =>
    withSupply((bank, panel, boat) => {
      bank.nominalV = 24;
      panel.circuits = [{ id: 'to-converter', ratingA: 10, kind: 'fuse', feeds: ['conv'] }];
      boat.supply.dcdc.push({ id: 'conv', place: 'locker', outV: 12.5, ratedA: 5, efficiencyPct: 80, isolated: true });
      boat.supply.panels.push({
        id: 'low',
        place: 'helm',
        from: 'conv',
        circuits: [{ id: 'low-circuit', ratingA: 10, kind: 'fuse', feeds }],
      });
    });

  it('gives what hangs on it at its own volts, and takes that with its loss at the lowest of its bank', () => {
    const [entry] = planned(behind(['display.dc', 'radio.dc'])).converters;
    const outA = 18 / 12.5 + 6;
    expect(entry?.mostA).toBeCloseTo(outA, 9);
    expect(entry?.takesA).toBeCloseTo((outA * 12.5) / 0.8 / 20, 9);
    expect(entry).toMatchObject({ panel: 'main-panel', circuit: 'to-converter', inV: 24, serves: ['low'] });
  });

  it('that feeds itself has no bank, and is told of without end', () => {
    const boat = withSupply((_, panel, own) => {
      own.supply.dcdc.push({ id: 'conv', place: 'locker', outV: 12, ratedA: 5, efficiencyPct: 80, isolated: true });
      panel.from = 'conv';
      panel.circuits.push({ id: 'round', ratingA: 5, kind: 'fuse', feeds: ['conv'] });
    });
    const { converters, panels } = planned(boat);
    expect(panels[0]).toMatchObject({ source: 'conv', banks: [] });
    expect(Number.isFinite(converters[0]?.mostA)).toBe(true);
  });
});

it('whatever is said of a supply, rings too, what is told keeps its shape and every figure is a number', () => {
  const schema = z.strictObject(panelsEntriesSchema);
  const ids = ['p0', 'p1', 'p2', 'house', 'conv'];
  const size = fc.oneof(fc.constantFrom(0.001, 1e4), fc.double({ min: 0.001, max: 1e4, noNaN: true }));
  const panel = fc.record({
    from: fc.constantFrom(...ids),
    mainA: size,
    feeds: fc.subarray([...ids, 'display.dc', 'radio.dc', 'nav']),
  });
  fc.assert(
    fc.property(fc.array(panel, { minLength: 1, maxLength: 3 }), size, size, (panels, areaMm2, volts) => {
      const boat = withSupply((bank, _, own) => {
        Object.assign(bank, { nominalV: Math.min(1000, volts), shortCircuitA: volts, coldCrankingA: volts });
        own.supply.dcdc.push({
          id: 'conv',
          place: 'helm',
          outV: Math.min(1000, volts),
          ratedA: areaMm2,
          efficiencyPct: 1,
          isolated: false,
        });
        own.supply.panels = panels.map(({ from, mainA, feeds }, at) => ({
          id: `p${at}`,
          place: 'helm',
          from,
          mainA,
          feeder: { length: near(mainA % 1000), areaMm2 },
          circuits: [{ id: `c${at}`, ratingA: mainA, kind: 'fuse', feeds }],
        }));
      });
      expect(schema.safeParse(planned(boat)).error).toBeUndefined();
    }),
    { numRuns: 60 },
  );
});
