import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { aPilotBoat } from '../boat/pilot-boat.test-helper.ts';
import { plan } from '../plan.ts';
import type { FeedEntry } from '../plan-shape.ts';
import { conductorsOf } from './conductors-of.ts';
import { currentForBoth } from './size-leads.ts';

/** The feed of a pilot whose computer and drive draw so much, over so many metres of feed and of lead, longest. */
const feedOf = ({
  feedM,
  leadM,
  runA,
  peakA = runA,
  own = 0,
  cable,
}: {
  feedM: number;
  leadM: number;
  runA: number;
  peakA?: number;
  own?: number;
  cable?: { areaMm2?: number };
}): FeedEntry => {
  const exact = (valueM: number) => ({ valueM, how: 'taped' as const, lessM: 0, moreM: 0 });
  const tail = exact(0.5);
  const { boat } = aPilotBoat({ drive: { runA, peakA } })
    .sheet('pilot-computer-0183', (sheet) => {
      for (const power of sheet.power ?? []) {
        Object.assign(power, { typical: own, max: own, behaves: 'current' });
        delete power.fuseA;
      }
    })
    .unit('pilot', { tail })
    .unit('pump', { tail })
    .change((draft) => {
      // a way is never shorter than straight
      for (const place of draft.places) if (place.id === 'stern-rail') Object.assign(place, { xM: 4, yM: -0.8, zM: 1 });
      for (const way of draft.ways) if (way.id === 'locker-stern') way.length = exact(leadM - 1);
      draft.places.push({
        id: 'far',
        name: 'far panel',
        xM: 4,
        yM: -0.8,
        zM: 0.9,
        exposure: 'dry',
        reach: 'open',
        tees: false,
      });
      draft.ways.push({
        id: 'far-locker',
        ends: ['far', 'locker'],
        length: exact(feedM - 1),
        kind: 'open',
        known: 'seen',
      });
      const circuit = { id: 'far-circuit', ratingA: 5, kind: 'breaker' as const, feeds: ['pilot.dc'] };
      for (const panel of draft.supply.panels)
        panel.circuits = panel.circuits.filter(({ id }) => id !== 'pilot-circuit');
      draft.supply.panels.push({ id: 'far-panel', place: 'far', from: 'house', circuits: [circuit] });
      if (cable !== undefined) {
        draft.cables.push({
          id: 'old-lead',
          kind: 'analog',
          from: { place: 'locker' },
          to: { place: 'stern-rail' },
          serves: 'pump-lead',
          ways: ['locker-stern'],
          length: exact(leadM),
          diameterMm: 8,
          condition: 'good',
          fate: 'stays',
          ...cable,
        });
      }
    });
  const found = plan(boat, new Map()).feeds.find(({ to }) => to === 'pilot.dc');
  if (found === undefined) throw new Error('No feed of the pilot.');
  return found;
};

describe('power cable and drive cable of a pilot', () => {
  // IEC 60228 class 5 tinned at 20 °C, computed; here at 30 °C, where copper has 4 % more
  it.each([
    ['PW-24', '2.5', 7, 3.13],
    ['PW-25', '4', 10, 3.54],
    ['PW-26', '10', 7, 13.19],
  ])('%s: one size, %s mm² over %i m in all, up to %f A for a drop of 0.36 V', (_id, size, oneWayM, at20A) => {
    const most = (at20A * 250) / 260;
    for (const feedM of [2, oneWayM / 2]) {
      const ask = { feedM, leadM: oneWayM - feedM };
      const within = feedOf({ ...ask, runA: most * 0.985 });
      expect(within.areaMm2).toBe(Number(size));
      expect(within.leads?.[0]).toMatchObject({ areaMm2: Number(size), wire: 'picked' });
      expect(within.leads?.[0]?.togetherPct).toBeLessThanOrEqual(3);
      expect(feedOf({ ...ask, runA: most * 1.015 }).areaMm2).toBeGreaterThan(Number(size));
    }
  });

  it('a lead that lies aboard takes its volts from the share of the feed', () => {
    const ask = { feedM: 4, leadM: 6, runA: 5 };
    const free = feedOf(ask);
    const thin = feedOf({ ...ask, cable: { areaMm2: 6 } });
    const thick = feedOf({ ...ask, cable: { areaMm2: 16 } });
    expect(thin.leads?.[0]).toMatchObject({ wire: 'aboard', areaMm2: 6, lengthM: 6 });
    expect(thin.areaMm2).toBeGreaterThan(thick.areaMm2 ?? 99);
    for (const feed of [free, thin, thick]) expect(feed.leads?.[0]?.togetherPct).toBeLessThanOrEqual(3);
  });

  it('a lead aboard that nobody has measured has no figures', () => {
    const [lead] = feedOf({ feedM: 4, leadM: 6, runA: 5, cable: {} }).leads ?? [];
    expect(lead).toMatchObject({ wire: 'aboard' });
    expect(lead?.togetherPct).toBeUndefined();
  });

  it('lose together what each loses, the computer drawing in the feed alone', () => {
    const feed = feedOf({ feedM: 3, leadM: 5, runA: 4, own: 1 });
    const ohm = conductorsOf('metric').find(({ areaMm2 }) => areaMm2 === feed.areaMm2)?.ohmPerKm20 ?? Number.NaN;
    const at30 = (ohm * 260) / 250;
    expect(feed.leads?.[0]?.togetherV).toBeCloseTo((2 * 3 * 5 * at30 + 2 * 5 * 4 * at30) / 1000, 5);
  });
});

test('a wire that the plan picks keeps the share of the peak as well', () => {
  const amps = fc.double({ min: 0.5, max: 6, noNaN: true });
  const lengthM = fc.double({ min: 1.5, max: 6, noNaN: true });
  fc.assert(
    fc.property(amps, fc.double({ min: 1, max: 5, noNaN: true }), lengthM, lengthM, (runA, times, feedM, leadM) => {
      const feed = feedOf({ feedM, leadM, runA, peakA: runA * times });
      expect(feed.whyNot).toBeUndefined();
      expect(feed.leads?.[0]?.peakPct).toBeLessThanOrEqual(10);
      expect(feed.leads?.[0]?.togetherPct).toBeLessThanOrEqual(3);
    }),
    { numRuns: 8 },
  );
}, 30_000);

test('choice-drive-drop: 3 A running and 34 A at the peak ask for the wire of 10.2 A, 6 A and 18 A for that of 6 A', () => {
  expect(currentForBoth({ runA: 3, peakA: 34, dropV: 0.36, peakV: 1.2 })).toBeCloseTo(10.2, 9);
  expect(currentForBoth({ runA: 6, peakA: 18, dropV: 0.36, peakV: 1.2 })).toBe(6);
});

test('a longer lead or a hungrier drive never asks for a thinner feed', () => {
  const ask = fc.record({
    feedM: fc.double({ min: 1.5, max: 8, noNaN: true }),
    leadM: fc.double({ min: 1.5, max: 8, noNaN: true }),
    runA: fc.double({ min: 0.5, max: 12, noNaN: true }),
  });
  const thick = (feed: FeedEntry): number => feed.areaMm2 ?? Number.POSITIVE_INFINITY;
  fc.assert(
    fc.property(
      ask,
      fc.double({ min: 0, max: 5, noNaN: true }),
      fc.double({ min: 0, max: 5, noNaN: true }),
      (own, moreM, moreA) => {
        const area = thick(feedOf(own));
        expect(thick(feedOf({ ...own, leadM: own.leadM + moreM }))).toBeGreaterThanOrEqual(area);
        expect(thick(feedOf({ ...own, runA: own.runA + moreA }))).toBeGreaterThanOrEqual(area);
      },
    ),
    { numRuns: 8 },
  );
}, 30_000);
