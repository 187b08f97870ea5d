import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aBoat, type BoatBuilder } from './boat/a-boat.test-helper.ts';
import type { Boat } from './boat/boat-schema.ts';
import { edits } from './boat/edits/index.ts';
import { inPlace } from './boat/in-place.ts';
import type { PhasesPart } from './phases-shape.ts';
import { lateParts } from './plan.ts';
import { planWith, withoutLateParts } from './plan-with.ts';

const { power, order, ledRound, phases } = lateParts;
const plan = planWith({ ...withoutLateParts, power, order, ledRound, phases });
const phasesOf = (boat: Boat): PhasesPart | undefined => plan(boat, new Map()).phases;
const orderCost = (boat: Boat): number =>
  plan(boat, new Map()).shopping.reduce((sum, { count, each = 0 }) => sum + Math.round(count * each), 0);

const later = (...units: string[]): BoatBuilder =>
  units.reduce((builder, unit) => builder.unit(unit, { phase: 2 }), aBoat());

/** The old radio is served by the converter until a radio on the bus takes its place in the second phase. */
const newRadio = (): Boat =>
  aBoat()
    .unit('radio', { fate: 'goes', phase: 2 })
    .add({
      kit: [{ id: 'radio-new', name: 'New radio', sheet: 'small-display', fate: 'comes', phase: 2, place: 'helm' }],
      needs: [{ reading: 'position', at: 'radio-new', must: true }],
    })
    .change((boat) => {
      boat.joins[0]?.members.push({ kit: 'radio-new', port: 'n2k', as: 'both' });
    }).boat;

describe('a refit in one go', () => {
  test('has no phases, whichever number its phase has', () => {
    expect(phasesOf(aBoat().boat)).toBeUndefined();
    const third = aBoat().boat.kit.map((unit) => (unit.fate === 'stays' ? unit : { ...unit, phase: 3 }));
    expect(phasesOf({ ...aBoat().boat, kit: third })).toBeUndefined();
  });
});

describe('a refit in two phases', () => {
  test('says what comes in each, what arrives, and which phase brings the rest', () => {
    const [first, second] = phasesOf(later('compass').boat)?.phases ?? [];
    expect(first).toMatchObject({ phase: 1, comes: ['converter', 'display', 'gnss'], goes: [] });
    expect(first?.arrives.map(({ reading, at }) => `${reading} at ${at}`)).toEqual([
      'position at display',
      'position at radio',
    ]);
    expect(first?.missing).toEqual([{ reading: 'heading', at: 'display', must: true, seenBefore: false, from: 2 }]);
    expect(second).toMatchObject({ phase: 2, comes: ['compass'], missing: [] });
  });

  test('lays each bus out for the units that are aboard', () => {
    const [first, second] = phasesOf(later('compass').boat)?.phases ?? [];
    expect(first?.buses).toMatchObject([{ id: 'nav', devices: 3, broken: [] }]);
    expect(second?.buses).toMatchObject([{ id: 'nav', devices: 4, broken: [] }]);
  });

  test('names the feeds that grow: here the one of the bus only in its load', () => {
    const boat = later('display').change((draft) => {
      const [circuit] = draft.supply.panels[0]?.circuits.filter(({ id }) => id === 'bus-circuit') ?? [];
      circuit?.feeds.push('radio.dc');
    }).boat;
    const [first, second] = phasesOf(boat)?.phases ?? [];
    const loadOf = (entry: typeof first): number | undefined =>
      entry?.feeds.find(({ line }) => line === 'feed:main-panel~nav')?.loadA;
    expect(loadOf(first)).toBeLessThan(loadOf(second) ?? 0);
  });

  test('tells what each converter is for', () => {
    expect(phasesOf(later('compass').boat)?.phases[0]?.converters).toEqual([
      { kit: 'converter', for: [{ reading: 'position', at: 'radio' }] },
    ]);
  });
});

describe('a converter that serves only until a later unit comes', () => {
  const found = phasesOf(newRadio());

  test('is named, and is part of what phasing costs', () => {
    expect(found?.between).toEqual(['converter']);
    expect(found?.phases.map(({ converters }) => converters[0]?.for.length)).toEqual([1, 0]);
    expect(found?.costs.more).toContainEqual(expect.objectContaining({ id: 'unit-converter-0183', count: 1 }));
  });

  test('is saved by the unit that takes over, brought forward; with its edits in the boat nothing is bought for the time between', () => {
    const cure = found?.costs.cures.find(({ says }) => says.includes('New radio'));
    expect(cure?.says).toBe('Fit New radio in phase 1 already, and do without Converter for the old radio.');
    expect(cure?.saves).toBe(found?.costs.cost);
    const after = inPlace(newRadio(), (draft) => {
      edits['set-fate'].ready({ unit: 'radio-new', fate: 'comes' }).change(draft);
      edits['set-fate'].ready({ unit: 'radio', fate: 'goes' }).change(draft);
      edits['remove-unit'].ready({ unit: 'converter' }).change(draft);
    });
    expect(cure?.edits.map(({ edit }) => edit)).toEqual(['set-fate', 'set-fate', 'remove-unit']);
    expect(phasesOf(after)).toBeUndefined();
    expect(orderCost(after)).toBe(found?.atOnce.cost);
  });
});

test('nothing is bought for the old lines of a unit that leaves later, though nobody entered its cables', () => {
  const old = aBoat().change((boat) => {
    for (const unit of boat.kit) if (unit.id !== 'display' && unit.id !== 'radio') unit.fate = 'stays';
    for (const unit of boat.kit) if (unit.id === 'radio') Object.assign(unit, { fate: 'goes', phase: 2 });
  }).boat;
  const [first] = phasesOf(old)?.phases ?? [];
  expect(first?.buy.map(({ id }) => id).filter((id) => id.startsWith('pair'))).toEqual([]);
  expect(first?.buy.find(({ id }) => id === 'cable-label')?.count).toBe(
    plan(old, new Map()).shopping.find(({ id }) => id === 'cable-label')?.count,
  );
});

describe('what to provide early', () => {
  const provided = (boat: Boat) => phasesOf(boat)?.provide.map(({ does, at, until }) => `${does} ${at} ${until}`);

  test('a tee where the tee of the later unit will stand', () => {
    const walk = plan(later('compass').boat, new Map()).buses[0]?.walk;
    const place = walk?.find(({ tees }) => tees.includes('compass.n2k'))?.place;
    expect(provided(later('compass').boat)).toEqual([`tee ${place} 2`]);
  });

  test('none where the trunk is settled as it will be: its later tee stands there free', () => {
    const boat = later('compass').boat;
    const [{ grade, walk } = { grade: 'light' as const, walk: [] }] = plan(boat, new Map()).buses;
    const settled = inPlace(boat, (draft) =>
      edits['pin-layout'].ready({ bus: 'nav', grade, walk, state: 'fixed' }).change(draft),
    );
    expect(provided(settled)).toEqual([]);
    expect(phasesOf(settled)?.phases[0]?.buses.map(({ broken }) => broken)).toEqual([[]]);
    // all it costs is the cap on that tee until the unit comes
    expect(phasesOf(settled)?.costs.more).toMatchObject([{ id: 'micro-dust-cap', count: 1 }]);
  });

  test('a circuit that feeds only the later unit, and a messenger line in the conduit its feed takes', () => {
    const boat = later('display').change((draft) => {
      const [, helm] = draft.supply.panels[0]?.circuits ?? [];
      if (helm !== undefined) helm.feeds = ['display.dc'];
    }).boat;
    expect(provided(boat)).toEqual(
      expect.arrayContaining(['circuit main-panel.helm-circuit 2', 'messenger locker-helm 2']),
    );
  });
});

test('whatever comes when: the orders add up to the order at once and what phasing costs, and the last phase is the plan', () => {
  const units = ['compass', 'converter', 'display', 'gnss'] as const;
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 4, maxLength: 4 }), (numbers) => {
      const boat = units.reduce((builder, unit, n) => builder.unit(unit, { phase: numbers[n] ?? 1 }), aBoat()).boat;
      const found = phasesOf(boat);
      expect(found === undefined).toBe(new Set(numbers).size === 1);
      if (found === undefined) return;
      const sum = found.phases.reduce((all, { cost }) => all + cost, 0);
      expect(sum).toBe(found.atOnce.cost + found.costs.cost);
      if (found.between.length === 0) {
        expect(found.atOnce.cost).toBe(orderCost(boat));
        expect(found.costs.more.every(({ count }) => count > 0)).toBe(true);
      }
      for (const { saves } of found.costs.cures) expect(saves).toBeLessThanOrEqual(found.costs.cost);
    }),
    { numRuns: 15 },
  );
});
