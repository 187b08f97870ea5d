import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { checkReferences } from '../boat/check-references.ts';
import { applyEdits, undo } from '../boat/history.ts';
import { startHistory } from '../boat/start-history.ts';
import { typicalSheets } from '../facts/sheets/index.ts';
import { usualNeedsOf } from '../facts/usual-needs.ts';
import { sheetReadings } from '../readings/sheet-readings.ts';
import { placeUnit } from './place-unit.ts';
import { boatWith, emptyBoat, typical } from './sloop.test-helper.ts';

const screen = typical('multifunction-display-10');

test('the first unit with a bus plug brings the bus, the second does not', () => {
  const first = placeUnit(emptyBoat(), { sheet: screen, place: 'helm' });
  expect(first.edits.map(({ edit }) => edit)).toEqual([
    'add-bus',
    'add-sheet',
    'add-unit',
    'add-need',
    'add-need',
    'add-need',
  ]);
  const boat = boatWith(emptyBoat(), [screen.id]);
  const second = placeUnit(boat, { sheet: screen, place: 'helm' });
  expect(second.edits.map(({ edit }) => edit)).not.toContain('add-bus');
});

test('a unit has the name of its sheet in plain words, and a second one says where it is', () => {
  const boat = boatWith(emptyBoat(), [screen.id]);
  expect(boat.kit[0]?.name).toBe('10-inch multifunction display');
  const second = placeUnit(boat, { sheet: screen, place: 'stern-rail' }).unit;
  expect([second.id, second.name, second.fate]).toEqual([
    'display-2',
    '10-inch multifunction display, stern rail',
    'comes',
  ]);
});

test('a screen wants what no helm is without, and more once something aboard says it', () => {
  const boat = boatWith(emptyBoat(), [screen.id]);
  expect(boat.needs.map(({ reading, must }) => [reading, must])).toEqual([
    ['position', true],
    ['course-speed-ground', true],
    ['depth', true],
  ]);
  const more = placeUnit(boat, { sheet: typical('sensor-dst-bus'), place: 'mast-base' });
  expect(more.needs.map(({ reading, at, must }) => [reading, at, must])).toEqual([
    ['speed-water', 'display', true],
    ['water-temperature', 'display', false],
  ]);
  expect(more.says).toBe('Put Through-hull sensor for depth, speed and temperature at mast base, with 2 needs.');
});

test('an antenna alone shows no ships on a screen', () => {
  const boat = boatWith(emptyBoat(), [screen.id]);
  expect(placeUnit(boat, { sheet: typical('vhf-whip-1m'), place: 'stern-rail' }).needs).toEqual([]);
  const ais = placeUnit(boat, { sheet: typical('ais-class-b'), place: 'locker' });
  expect(ais.needs).toContainEqual({ reading: 'ais-targets', at: 'display', must: true });
});

test('engines that go by numbers are wanted each by its number', () => {
  const boat = boatWith(emptyBoat(), ['engine-gateway', 'engine-gateway']);
  const numbered = {
    ...boat,
    kit: boat.kit.map((unit, instance) => ({
      ...unit,
      instances: [{ port: 'n2k', reading: 'engine' as const, instance }],
    })),
  };
  const { needs } = placeUnit(numbered, { sheet: screen, place: 'helm' });
  expect(needs.filter(({ reading }) => reading === 'engine').map(({ instance }) => instance)).toEqual([0, 1]);
});

test('needs can be left out, and what goes brings none', () => {
  expect(placeUnit(emptyBoat(), { sheet: screen, place: 'helm', withNeeds: false }).needs).toEqual([]);
  expect(placeUnit(emptyBoat(), { sheet: screen, place: 'helm', fate: 'goes' }).needs).toEqual([]);
});

test('every typical sheet can be put aboard and taken back as one step', () => {
  for (const sheet of typicalSheets) {
    const before = startHistory(aBoat().boat);
    const { edits, says } = placeUnit(before.boat, { sheet, place: 'helm' });
    const after = applyEdits(before, edits, says);
    expect(checkReferences(after.boat)).toEqual([]);
    expect(after.done).toHaveLength(1);
    expect(undo(after).boat).toEqual(before.boat);
  }
});

test('a sheet of one’s own comes along, under another id where its own is taken', () => {
  const own = { ...screen, id: 'helm', source: 'manual' as const };
  const { edits, unit } = placeUnit(aBoat().boat, { sheet: own, place: 'helm' });
  expect(unit.sheet).toBe('helm-2');
  expect(applyEdits(startHistory(aBoat().boat), edits).boat.sheets.at(-1)?.id).toBe('helm-2');
});

test('every kind with usual needs has a typical sheet that understands what it must have', () => {
  for (const { kind } of typicalSheets) {
    const usual = usualNeedsOf(kind);
    if (usual === undefined) continue;
    const heard = new Set(typicalSheets.filter((one) => one.kind === kind).flatMap((one) => sheetReadings(one).hears));
    for (const reading of [...usual.must, ...usual.mustIfSaid])
      expect([kind, reading, heard.has(reading)]).toEqual([kind, reading, true]);
  }
});
