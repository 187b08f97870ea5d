import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { plan as planOf } from '../../core/plan.ts';
import type { BusEntry, Plan } from '../../core/plan-shape.ts';
import { sheetUnits } from './sheet-units.ts';
import { stripOfBus } from './strip-nodes.ts';
import { unitMarks } from './unit-marks.ts';

const { boat } = aBoat();
const known = planOf(boat, new Map());
const [first] = known.buses;
if (first === undefined) throw new Error('The Tern has a bus.');

const stripWith = (walk: BusEntry['walk'], lines: Plan['lines'] = []): ReturnType<typeof stripOfBus> => {
  const index = indexBoat(boat);
  const bus = { ...first, walk, ends: [walk[0]?.place ?? '', walk.at(-1)?.place ?? ''] as [string, string] };
  const plan = { ...known, lines, buses: [bus] };
  return stripOfBus({ bus, plan, index, marks: unitMarks({ boat, index, plan }), units: sheetUnits.metres });
};

test('a trunk that runs aft is read from the stern, so that the strip lies under the boat', () => {
  const strip = stripWith([
    { place: 'mast-base', tees: ['compass.n2k'] },
    { place: 'helm', via: 'helm-mast', tees: ['display.n2k'] },
    { place: 'locker', via: 'locker-helm', tees: ['feed', 'gnss.n2k'] },
  ]);
  expect(strip.order).toBe('axis');
  expect(strip.nodes.map((node) => node.tee ?? node.kind)).toEqual([
    'end',
    'gnss.n2k',
    'feed',
    'display.n2k',
    'compass.n2k',
    'end',
  ]);
  expect(strip.stretches.map((stretch) => stretch.lengthM)).toEqual([2.2, expect.closeTo(1.9, 9)]);
});

test('a trunk that doubles back is read in its own order, by metres along it', () => {
  const strip = stripWith([
    { place: 'locker', tees: ['feed'] },
    { place: 'mast-base', via: 'locker-mast', tees: ['compass.n2k'] },
    { place: 'helm', via: 'helm-mast', tees: ['display.n2k'] },
  ]);
  expect(strip.order).toBe('trunk');
  expect(strip.nodes.map((node) => node.alongM)).toEqual([0, 0, 2.7, expect.closeTo(4.6, 9), expect.closeTo(4.6, 9)]);
});

test('a device on the strip has its drop, its volts and its number', () => {
  const index = indexBoat(boat);
  const strip = stripOfBus({
    bus: first,
    plan: known,
    index,
    marks: unitMarks({ boat, index, plan: known }),
    units: sheetUnits.metres,
  });
  for (const node of strip.nodes.filter(({ kind }) => kind === 'device')) {
    expect(node.drop?.kind).toBe('drop');
    expect(node.lowestV).toBeGreaterThan(9);
    expect(node.mark?.number).toBeGreaterThan(0);
  }
  const trunkM = strip.stretches.reduce((sum, stretch) => sum + stretch.lengthM, 0);
  expect(trunkM).toBeCloseTo(first.lengthM, 6);
  expect(strip.stretches.every((stretch) => stretch.about[0]?.startsWith('trunk:'))).toBe(true);
});

test('an unknown unit in a walk still has its tee', () => {
  const other: Boat = { ...boat, kit: [] };
  const index = indexBoat(other);
  const strip = stripOfBus({ bus: first, plan: known, index, marks: [], units: sheetUnits.metres });
  expect(strip.nodes.filter(({ kind }) => kind === 'device').length).toBe(first.devices);
});
