import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Boat } from './boat/boat-schema.ts';
import { aCompassBoat } from './compass-boat.test-helper.ts';
import type { CompassEntry, CompassFeed } from './compass-shape.ts';
import { plan } from './plan.ts';

const entryOf = (boat: Boat): CompassEntry => {
  const [entry] = plan(boat, new Map()).compass;
  if (entry === undefined) throw new Error('The boat has no compass.');
  return entry;
};
const feedOf = (boat: Boat, line: string): CompassFeed => {
  const found = entryOf(boat).feeds.find((feed) => feed.line === line);
  if (found === undefined) throw new Error(`${line} is not near the compass.`);
  return found;
};
const laidSingle = aCompassBoat({ aboveM: 0.3 }).change((draft) => {
  for (const { circuits } of draft.supply.panels) for (const circuit of circuits) circuit.laid = 'single';
});
const display = 'feed:display.supply~main-panel';

describe('what turns the compass of a boat', () => {
  it('PW-77 (B = 0.2 I/d, δ = atan(B/H), computed physics): 5 A in a single wire at 0.3 m turn it 9.46° where H is 20 µT', () => {
    const boat = laidSingle
      .sheet('small-display', (sheet) => {
        for (const power of sheet.power ?? [])
          if (power.port === 'dc') Object.assign(power, { typical: 5, max: 5, unit: 'A', behaves: 'current' });
      })
      .with({ limits: { 'compass-field': { value: 20, reason: 'The Solent.' } } }).boat;
    const feed = feedOf(boat, display);
    expect(feed).toMatchObject({ currentA: 5, distanceM: 0.3, laid: 'single', laidBy: 'file', tooNear: true });
    expect(feed.fieldUt).toBeCloseTo(3.3333, 3);
    expect(feed.deviationDeg).toBeCloseTo(9.462, 2);
    // PW-81: it would have to keep 3.18 m off
    expect(feed.keepM).toBe(3.2);
    expect(entryOf(boat)).toMatchObject({ horizontalUt: 20, allowedDeg: 0.9 });
  });

  it('the same feed in the two-core cable the plan buys does not turn it', () => {
    const feed = feedOf(aCompassBoat({ aboveM: 0.3 }).boat, display);
    expect(feed).toMatchObject({ laid: 'pair', laidBy: 'plan', tooNear: false });
    expect(feed.deviationDeg).toBeLessThan(0.2);
  });

  it('a cable aboard with one conductor is a single wire, whatever the plan would have bought', () => {
    const boat = aCompassBoat().change((draft) => {
      draft.cables.push({
        id: 'old-lead',
        kind: 'feed',
        from: { place: 'locker', at: 'main-panel.helm-circuit' },
        to: { place: 'helm', at: 'display.supply' },
        serves: 'helm-circuit',
        ways: ['locker-helm'],
        length: { valueM: 3, how: 'taped' },
        diameterMm: 4,
        conductors: 1,
        condition: 'good',
        fate: 'stays',
      });
    }).boat;
    expect(feedOf(boat, display)).toMatchObject({ laid: 'single', laidBy: 'cable' });
  });

  it('feeds beyond 5 m are not spoken of, nor is a compass that goes ashore', () => {
    expect(entryOf(aCompassBoat({ aboveM: 8 }).boat).feeds).toEqual([]);
    expect(plan(aCompassBoat().unit('card', { fate: 'goes' }).boat, new Map()).compass).toEqual([]);
  });

  it('a unit is too near within the distance of its sheet; without one what is usual for its kind counts, else a metre', () => {
    const units = (compassSafeM?: number, kind = 'display') =>
      entryOf(
        aCompassBoat({ aboveM: 0.5 }).sheet('small-display', (sheet) => {
          sheet.kind = kind;
          if (compassSafeM !== undefined) sheet.compassSafe = { valueM: compassSafeM, how: 'papers' };
        }).boat,
      ).units.find(({ unit }) => unit === 'display');
    expect(units(0.6)).toMatchObject({ safeBy: 'sheet', safeM: 0.6, tooNear: true });
    expect(units(0.4)).toMatchObject({ safeBy: 'sheet', tooNear: false });
    expect(units()).toMatchObject({ safeBy: 'kind', safeM: 0.7, tooNear: true });
    expect(units(undefined, 'lamp')).toMatchObject({ safeBy: 'taken', safeM: 1, tooNear: true });
  });

  it('whatever the height: the deviation falls with distance, and too near is just where it is more than allowed', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.15, max: 4, noNaN: true }), fc.boolean(), (aboveM, single) => {
        const boat = aCompassBoat({ aboveM }).change((draft) => {
          for (const { circuits } of draft.supply.panels)
            for (const circuit of circuits) circuit.laid = single ? 'single' : 'pair';
        }).boat;
        const { feeds, allowedUt, sumUt } = entryOf(boat);
        for (const { fieldUt, tooNear, distanceM, keepM } of feeds) {
          expect(tooNear).toBe(fieldUt > allowedUt);
          if (tooNear) expect(distanceM).toBeLessThan(keepM);
        }
        expect(sumUt).toBeCloseTo(
          feeds.reduce((sum, { fieldUt }) => sum + fieldUt, 0),
          5,
        );
      }),
      { numRuns: 12 },
    );
  });
});
