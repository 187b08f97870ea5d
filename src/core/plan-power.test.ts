import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aBoat } from './boat/a-boat.test-helper.ts';
import type { Boat } from './boat/boat-schema.ts';
import { plan } from './plan.ts';
import type { FeedEntry, Plan } from './plan-shape.ts';
import { constantPower } from './power/constant-power.ts';

const planned = (boat: Boat): Plan => plan(boat, new Map());
const feedTo = (entries: Plan, to: string): FeedEntry => {
  const found = entries.feeds.find((entry) => entry.to === to);
  if (found === undefined) throw new Error(`No feed to ${to}.`);
  return found;
};
const voltsAt = (entries: Plan, node: string): number =>
  entries.supplies.flatMap(({ at }) => at).find((entry) => entry.node === node)?.volts ?? Number.NaN;

describe('the direct current of a boat', () => {
  it('sizes the feed of a display: 18 W at the lowest 10 V are 1.8 A, and the wire keeps 3 % of 12 V', () => {
    const feed = feedTo(planned(aBoat().boat), 'display.dc');
    expect(feed.loadA).toBeCloseTo(1.8, 9);
    expect(feed.allowedV).toBeCloseTo(0.36, 9);
    expect(feed.realDropV ?? 1).toBeLessThanOrEqual(0.36);
    expect(feed.ampacityA ?? 0).toBeGreaterThanOrEqual(feed.fuseA ?? 99);
    // the maker of the display wants 5 A and the circuit has 15, so it gets a fuse of its own: PW-49, 3 A
    expect(feed).toMatchObject({ circuitA: 15, fuseA: 3, fuseBy: 'in-line', wire: 'picked' });
  });

  it('gives at the far end what one constant-power load on one wire gives by the published formula', () => {
    const { boat } = aBoat()
      .with({ buses: [], joins: [], needs: [] })
      .change((draft) => {
        draft.kit = draft.kit.filter(({ id }) => id === 'display');
        for (const panel of draft.supply.panels)
          panel.circuits = panel.circuits.filter(({ id }) => id === 'helm-circuit');
        for (const { circuits } of draft.supply.panels) for (const circuit of circuits) circuit.feeds = ['display.dc'];
      });
    const plan = planned(boat);
    const feed = feedTo(plan, 'display.dc');
    const feederOhm = (2 * 3.1 * 0.017241) / 16;
    const feedOhm = (feed.realDropV ?? 0) / feed.loadA;
    const alone = constantPower({ powerW: 18, sourceV: 11.8, loopOhm: feederOhm + feedOhm });
    expect(alone.works && alone.loadV).toBeCloseTo(feed.atEndV ?? 0, 4);
  });

  it('shows a sagging panel feeder at a unit far down the backbone', () => {
    const thin = aBoat().change((draft) => {
      for (const panel of draft.supply.panels) if (panel.feeder !== undefined) panel.feeder.areaMm2 = 1;
    });
    const [before, after] = [planned(aBoat().boat), planned(thin.boat)];
    expect(voltsAt(before, 'compass.n2k') - voltsAt(after, 'compass.n2k')).toBeGreaterThan(0.5);
  });

  it('is told of for a converter that in the end feeds itself, with the finding that no battery stands behind it', () => {
    const { boat } = aBoat().change((draft) => {
      draft.supply.dcdc.push({
        id: 'round',
        place: 'locker',
        outV: 12,
        ratedA: 5,
        efficiencyPct: 90,
        isolated: false,
      });
      for (const panel of draft.supply.panels) {
        panel.from = 'round';
        panel.circuits.push({ id: 'to-round', ratingA: 10, kind: 'fuse', feeds: ['round'] });
      }
    });
    const { supplies, findings } = planned(boat);
    expect(supplies.map(({ source }) => source)).toContain('round');
    expect(findings.find(({ rule }) => rule === 'supply/fed-by-nothing')?.says).toContain('feeds itself in a ring');
  });

  it('says that it cannot work, and where it fails first, instead of printing volts that cannot be', () => {
    const { boat } = aBoat()
      .sheet('small-display', (sheet) => {
        for (const power of sheet.power ?? []) if (power.port === 'dc') power.max = 4000;
      })
      .change((draft) => {
        for (const { circuits } of draft.supply.panels) for (const { feeds } of circuits) feeds.splice(1);
        for (const panel of draft.supply.panels) panel.feeder = { length: { valueM: 30, how: 'taped' }, areaMm2: 2.5 };
      });
    const supply = planned(boat).supplies.find(({ source }) => source === 'house');
    expect(supply).toMatchObject({ works: false, worst: expect.stringMatching(/\.(dc|n2k)$/), at: [] });
  });

  it('counts the resistance of the bank itself where the file gives it', () => {
    const soft = aBoat().change((draft) => {
      for (const bank of draft.supply.banks) bank.internalMilliOhm = 50;
    });
    const [stiff, sagging] = [planned(aBoat().boat), planned(soft.boat)];
    const drawnA = sagging.supplies[0]?.sourceA ?? 0;
    expect(voltsAt(stiff, 'main-panel') - voltsAt(sagging, 'main-panel')).toBeCloseTo(0.05 * drawnA, 1);
  });

  it('holds a wire that a person settled, and one that lies aboard, against the same limits', () => {
    const line = 'feed:display.supply~main-panel';
    const settled = aBoat().with({ pins: { wires: { [line]: { areaMm2: 6, state: 'fitted' } } } });
    expect(feedTo(planned(settled.boat), 'display.dc')).toMatchObject({ wire: 'settled', areaMm2: 6 });
  });

  it('counts the feed of a bus in its wire: at its far end is what the panel has less the drop of the feed', () => {
    const feedOf = (boat: Boat): { feed: FeedEntry; lostV: number; compassV: number } => {
      const plan = planned(boat);
      const feed = feedTo(plan, 'nav');
      return { feed, lostV: voltsAt(plan, feed.panel) - (feed.atEndV ?? 0), compassV: voltsAt(plan, 'compass.n2k') };
    };
    const plain = feedOf(aBoat().boat);
    expect(plain.lostV).toBeCloseTo(plain.feed.realDropV ?? 0, 5);
    const thick = feedOf(
      aBoat().with({ pins: { wires: { [plain.feed.line]: { areaMm2: 10, state: 'fitted' } } } }).boat,
    );
    expect(thick.lostV).toBeCloseTo(thick.feed.realDropV ?? 0, 5);
    expect(plain.lostV).toBeGreaterThan(2 * thick.lostV);
    // what the feed no longer loses arrives at the far end of the backbone
    expect(thick.compassV - plain.compassV).toBeCloseTo(plain.lostV - thick.lostV, 5);
  });

  it('takes a settled fuse for that of the circuit', () => {
    const { boat } = aBoat().with({
      pins: { fuses: { 'main-panel.helm-circuit': { ratingA: 5, state: 'fitted' } } },
    });
    expect(feedTo(planned(boat), 'display.dc')).toMatchObject({ circuitA: 5, fuseA: 5, fuseBy: 'circuit' });
  });

  it('feeds a boat through a converter, which draws from its own feed what it gives, by its efficiency', () => {
    const { boat } = aBoat().change((draft) => {
      const [panel] = draft.supply.panels;
      if (panel === undefined) throw new Error('No panel.');
      draft.supply.dcdc.push({ id: 'step', place: 'helm', outV: 13.6, ratedA: 10, efficiencyPct: 90, isolated: true });
      panel.circuits.push({ id: 'step-circuit', ratingA: 20, kind: 'breaker', feeds: ['step'] });
      draft.supply.panels.push({
        id: 'steady-panel',
        place: 'helm',
        from: 'step',
        circuits: [{ id: 'steady', ratingA: 10, kind: 'fuse', feeds: ['radio.dc'] }],
      });
      for (const circuit of panel.circuits) circuit.feeds = circuit.feeds.filter((target) => target !== 'radio.dc');
    });
    const { supplies, feeds } = planned(boat);
    const step = supplies.find(({ source }) => source === 'step');
    expect(step).toMatchObject({ works: true, sourceV: 13.6 });
    expect(step?.sourceA).toBeCloseTo(6, 9);
    const others = supplies.find(({ source }) => source === 'house')?.sourceA ?? 0;
    expect(others).toBeGreaterThan((13.6 * 6) / 0.9 / 11.8);
    // it is fed with what the house bank leaves at its plug, not with the 13.6 V it gives itself
    const fed = feeds.find(({ to }) => to === 'step');
    expect(fed?.atEndV).toBe(voltsAt(planned(boat), 'step'));
    expect(fed?.atEndV).toBeLessThan(11.8);
  });

  it('never asks a thinner wire or a smaller fuse for more power, nor gives more volts', { timeout: 60_000 }, () => {
    const withPower = (watts: number): FeedEntry =>
      feedTo(
        planned(
          aBoat().sheet('small-display', (sheet) => {
            for (const power of sheet.power ?? []) {
              if (power.port !== 'dc') continue;
              power.max = watts;
              delete power.fuseA;
            }
          }).boat,
        ),
        'display.dc',
      );
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 90 }), fc.integer({ min: 1, max: 40 }), (watts, more) => {
        const [small, large] = [withPower(watts), withPower(watts + more)];
        expect(large.areaMm2 ?? 0).toBeGreaterThanOrEqual(small.areaMm2 ?? 0);
        if (large.areaMm2 === small.areaMm2) expect(large.atEndV ?? 0).toBeLessThan(small.atEndV ?? 0);
      }),
      { numRuns: 25 },
    );
  });

  it('tells what every bank gives before the refit and in each phase', () => {
    const { loadSums } = planned(aBoat().boat);
    expect(loadSums.map(({ phase, from }) => [phase, from])).toEqual([
      [0, 'house'],
      [1, 'house'],
    ]);
    // before: the old radio alone, 6 A
    expect(loadSums[0]).toMatchObject({ mostA: 6, typicalA: 0.6 });
  });
});
