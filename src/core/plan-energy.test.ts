import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aBoat } from './boat/a-boat.test-helper.ts';
import type { Boat, Kit } from './boat/boat-schema.ts';
import type { Sheet } from './boat/sheet.ts';
import { plan } from './plan.ts';
import type { EnergyDay, Plan } from './plan-shape.ts';
import example from './power/example-day.check.json' with { type: 'json' };

const planned = (boat: Boat): Plan => plan(boat, new Map());
const dayOf = ({ energy }: Plan, when: string): EnergyDay => {
  const day = energy.find((entry) => entry.when === when);
  if (day === undefined) throw new Error(`No day ${when}.`);
  return day;
};
const sum = (parts: readonly number[]): number => parts.reduce((all, part) => all + part, 0);

/** The Tern with nothing aboard but units of these sheets, each on the house bank. */
const onlyWith = (rows: readonly (readonly [id: string, kind: string, amps: number])[]) =>
  aBoat()
    .with({ buses: [], joins: [], needs: [], kit: [] })
    .change((draft) => {
      for (const [id, kind, typical] of rows) {
        draft.sheets.push({
          id: `sheet-${id}`,
          name: id,
          kind,
          source: 'manual',
          plugs: [],
          ports: [{ id: 'dc', protocol: 'dc', role: 'listen', onPlug: 'supply' }],
          power: [{ port: 'dc', typical, max: typical, unit: 'A', behaves: 'current', minV: 10, maxV: 16 }],
        } satisfies Sheet);
        draft.kit.push({ id, name: id, sheet: `sheet-${id}`, fate: 'stays', place: 'helm' } satisfies Kit);
      }
      for (const { circuits } of draft.supply.panels) {
        circuits.splice(0, circuits.length, {
          id: 'all',
          ratingA: 50,
          kind: 'breaker',
          feeds: rows.map(([id]) => `${id}.dc`),
        });
      }
    });

describe('the energy of a day', () => {
  it.each([
    ['PW-63', 'day1H', 90.34],
    ['PW-64', 'day2H', 58.18],
  ] as const)('%s: the hours of a motor cruiser’s %s as the person’s own day take %f Ah', (_id, hoursOf, ah) => {
    const rows = example.rows.map((row, at) => [`unit-${at}`, 'instrument', row.currentA] as const);
    const hours = example.rows.map((row, at) => ({ unit: `unit-${at}`, hours: row[hoursOf] }));
    const { boat } = onlyWith(rows).with({ days: [{ id: 'coast', name: 'Coast', like: 'under-way-day', hours }] });
    expect(Math.abs(dayOf(planned(boat), 'coast').ahPerDayAfter - ah)).toBeLessThan(0.05);
  });

  it('tells a bulb of 10 W for ten hours from an LED of 0.1 A: 7.3 Ah a night (computed)', () => {
    const { boat } = onlyWith([
      ['bulb', 'lamp', 10 / 12],
      ['led', 'lamp', 0.1],
    ])
      .unit('bulb', { fate: 'goes' })
      .unit('led', { fate: 'comes' })
      .with({ days: [{ id: 'night', name: 'Night', like: 'anchor', hours: [{ kind: 'lamp', hours: 10 }] }] });
    const night = dayOf(planned(boat), 'night');
    expect(Math.abs(night.ahPerDayBefore - night.ahPerDayAfter - 7.3)).toBeLessThan(0.05);
  });

  it('adds up: units are the total, and banks with what no bank feeds are the total', () => {
    const { energy } = planned(aBoat().boat);
    expect(energy.map(({ when }) => when)).toEqual(['anchor', 'under-way-day', 'under-way-night', 'alongside']);
    for (const day of energy) {
      expect(sum(day.byKit.map(({ before }) => before?.wh ?? 0))).toBeCloseTo(day.whPerDayBefore, 4);
      expect(sum(day.byKit.map(({ after }) => after?.wh ?? 0))).toBeCloseTo(day.whPerDayAfter, 4);
      for (const { phase, wh, ah, unfedWh, leastWh, mostWh } of day.phases) {
        const banks = day.banks.filter((bank) => bank.phase === phase);
        expect(sum(banks.map((bank) => bank.wh)) + (unfedWh ?? 0)).toBeCloseTo(wh, 4);
        expect(ah * day.atV).toBeCloseTo(wh, 3);
        expect(leastWh).toBeLessThanOrEqual(wh + 1e-6);
        expect(mostWh).toBeGreaterThanOrEqual(wh - 1e-6);
      }
    }
  });

  it('adds up on any boat: more hours of a unit never take less, nor leave its bank longer', () => {
    const hours = fc.double({ min: 0, max: 12, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom('radio', 'display', 'gnss'), hours, hours, (unit, some, more) => {
        const days = [some, some + more].map((own, at) => ({
          id: `day-${at}`,
          name: 'A day',
          like: 'anchor' as const,
          hours: [{ unit, hours: own }],
        }));
        const result = planned(aBoat().with({ days }).boat);
        const [short, long] = [dayOf(result, 'day-0'), dayOf(result, 'day-1')];
        expect(long.whPerDayAfter).toBeGreaterThanOrEqual(short.whPerDayAfter - 1e-5);
        expect(long.banks.at(-1)?.enduranceH ?? 0).toBeLessThanOrEqual((short.banks.at(-1)?.enduranceH ?? 0) + 1e-5);
      }),
      { numRuns: 10 },
    );
  });

  it('says what each unit saves: the bank without it lasts so much longer', () => {
    const two = dayOf(
      planned(
        onlyWith([
          ['ais', 'ais', 0.25],
          ['alarm', 'alarm', 0.25],
        ]).boat,
      ),
      'anchor',
    );
    // 12 Ah a day from 55 Ah of a lead bank of 110 Ah: 110 h; half the load lasts twice as long
    expect(two.banks.at(-1)?.enduranceH).toBeCloseTo(110, 4);
    expect(two.byKit.map(({ savesH }) => savesH)).toEqual([expect.closeTo(110, 4), expect.closeTo(110, 4)]);
  });

  it('takes from the bank what a converter gives, with its losses', () => {
    const { boat } = onlyWith([['ais', 'ais', 0.25]]).change((draft) => {
      const [panel] = draft.supply.panels;
      if (panel === undefined) throw new Error('No panel.');
      draft.supply.dcdc.push({ id: 'step', place: 'helm', outV: 12, ratedA: 10, efficiencyPct: 80, isolated: true });
      const behind = { id: 'steady', ratingA: 10, kind: 'fuse' as const, feeds: ['ais.dc'] };
      draft.supply.panels.push({ id: 'steady-panel', place: 'helm', from: 'step', circuits: [behind] });
      for (const circuit of panel.circuits) circuit.feeds = ['step'];
    });
    expect(dayOf(planned(boat), 'anchor').banks.at(-1)).toMatchObject({ bank: 'house', ah: 7.5 });
  });

  it('names a unit of unknown draw and counts it in no sum; a load number is the most it may be', () => {
    const { boat } = aBoat()
      .sheet('gnss-receiver', (sheet) => {
        delete sheet.power;
      })
      .sheet('fixed-radio', (sheet) => {
        delete sheet.power;
      });
    const result = planned(boat);
    expect(result.unknownDraws).toEqual([{ kit: 'radio', before: true, after: true }]);
    const { byKit } = dayOf(result, 'under-way-night');
    expect(byKit.map(({ kit }) => kit)).not.toContain('radio');
    expect(byKit.find(({ kit }) => kit === 'gnss')).toMatchObject({
      known: 'load-number',
      after: { wh: 14.4, bank: 'house' },
    });
  });

  it('tells what no bank feeds apart, and marks a satellite terminal for what it is', () => {
    const { boat } = onlyWith([['dish', 'satellite-terminal', 6.25]]).change((draft) => {
      for (const { circuits } of draft.supply.panels) circuits.splice(0);
    });
    const day = dayOf(planned(boat), 'anchor');
    expect(day.byKit).toMatchObject([{ kit: 'dish', internet: true, after: { wh: 1800 } }]);
    expect(day.phases.at(-1)).toMatchObject({ wh: 1800, unfedWh: 1800 });
    expect(day.banks).toEqual([]);
  });
});
