import { expect, test } from 'vitest';
import { typicalSheets } from '../../facts/sheets/index.ts';
import { aBoat } from '../a-boat.test-helper.ts';
import type { Boat } from '../boat-schema.ts';
import { edits } from './index.ts';
import { refusalOf } from './refusal-of.test-helper.ts';

const tern = aBoat().boat;

test('a unit by a typical sheet brings the sheet into the file, once', () => {
  const wind = {
    id: 'wind',
    name: 'Wind sensor',
    sheet: 'wind-sensor-bus',
    fate: 'comes',
    place: 'mast-base',
  } as const;
  const one = edits['add-unit'].apply(tern, wind);
  const two = edits['add-unit'].apply(one, { ...wind, id: 'second-wind' });
  expect(two.kit.slice(-2).map((unit) => unit.id)).toEqual(['wind', 'second-wind']);
  expect(two.sheets.filter((sheet) => sheet.id === 'wind-sensor-bus')).toHaveLength(1);
  expect(refusalOf('add-unit', wind, one)?.says).toBe(
    '"wind" is the id of a unit twice; an id names one thing in the whole file.',
  );
});

test('a change of a sheet is for one unit, and a later one takes its place', () => {
  const path = 'ports.gps-in.baud';
  const once = edits['change-sheet'].apply(tern, { unit: 'radio', path, value: 38400, how: 'seen' });
  const twice = edits['change-sheet'].apply(once, { unit: 'radio', path, value: 4800, how: 'manual' });
  expect(twice.kit.find((unit) => unit.id === 'radio')?.changes).toEqual([{ path, value: 4800, how: 'manual' }]);
  expect(refusalOf('change-sheet', { unit: 'radio', path: 'ports.gps-inn.baud', value: 4800, how: 'seen' })?.says).toBe(
    'There is no `gps-inn` in `ports`; did you mean `gps-in`?',
  );
});

test('how a unit differs from its sheet is said anew in all, and taken back in all', () => {
  const baud = { path: 'ports.gps-in.baud', value: 38400, how: 'seen' } as const;
  const wet = { path: 'ipCode', value: 'IP67', how: 'manual' } as const;
  const once = edits['set-changes'].apply(tern, { unit: 'radio', changes: [baud] });
  const twice = edits['set-changes'].apply(once, { unit: 'radio', changes: [wet] });
  expect(twice.kit.find((unit) => unit.id === 'radio')?.changes).toEqual([wet]);
  expect(edits['set-changes'].title({ unit: 'radio', changes: [wet] }, tern)).toBe('Old radio differs from its sheet.');
  expect(edits['set-changes'].apply(twice, { unit: 'radio', changes: [] })).toEqual(tern);
  const twisted = { ...baud, path: 'ports.gps-in.id' };
  expect(refusalOf('set-changes', { unit: 'radio', changes: [twisted] })?.says).toContain('An id cannot be changed');
});

test('an instance number takes the place of the one the port had for that reading', () => {
  const port = 'compass.n2k';
  const once = edits['set-instance'].apply(tern, { port, reading: 'heading', instance: 1 });
  const twice = edits['set-instance'].apply(once, { port, reading: 'heading', instance: 2 });
  expect(twice.kit.find((unit) => unit.id === 'compass')?.instances).toEqual([
    { port: 'n2k', reading: 'heading', instance: 2 },
  ]);
});

test('a rate is set for one unit, set again, and goes back to its sheet', () => {
  const rateOf = (boat: Boat) => boat.kit.find(({ id }) => id === 'gnss')?.changes;
  const set = { port: 'gnss.n2k', message: 129025 } as const;
  const fast = edits['set-rate'].apply(tern, { ...set, everyMs: 500 });
  const slow = edits['set-rate'].apply(fast, { ...set, everyMs: 1000 });
  expect(rateOf(slow)).toEqual([{ path: 'ports.n2k.sends.129025.everyMs', value: 1000, how: 'seen' }]);
  expect(edits['set-rate'].apply(slow, set)).toEqual(tern);
  expect(edits['set-rate'].title({ ...set, everyMs: 500 }, tern)).toBe('gnss.n2k sends 129025 every 500 ms.');
  expect(refusalOf('set-rate', { port: 'gnss.n2k', message: 127505, everyMs: 500 })?.says).toContain('127505');
  expect(refusalOf('set-rate', { port: 'gnss.n2k', message: 'rmc', everyMs: 500 })).toBeDefined();
});

test('the rate of a message that is sent for several numbers is not set by half', () => {
  const twice = aBoat().sheet('gnss-receiver', (sheet) => {
    sheet.ports[0]?.sends?.push({ pgn: 127505, instance: 0 }, { pgn: 127505, instance: 1 });
  }).boat;
  expect(refusalOf('set-rate', { port: 'gnss.n2k', message: 127505, everyMs: 500 }, twice)?.says).toContain(
    'several times',
  );
});

test('units of one sheet get a copy of it that is their own and of the manual; the sheet itself stays', () => {
  const boat = edits['copy-sheet'].apply(tern, { units: ['gnss'], as: 'gnss-own', sourceNote: 'Manual, page 12.' });
  const own = boat.sheets.find(({ id }) => id === 'gnss-own');
  expect([own?.source, own?.sourceNote, own?.name]).toEqual(['manual', 'Manual, page 12.', 'GNSS receiver']);
  expect(boat.kit.find(({ id }) => id === 'gnss')?.sheet).toBe('gnss-own');
  expect(boat.sheets.find(({ id }) => id === 'gnss-receiver')).toEqual(
    tern.sheets.find(({ id }) => id === 'gnss-receiver'),
  );
  expect(refusalOf('copy-sheet', { units: ['gnss', 'display'], as: 'own' })?.says).toBe(
    'These units are not of one sheet.',
  );
});

test('a sheet that loses a port somebody is joined at is refused', () => {
  const [sheet] = tern.sheets.filter(({ id }) => id === 'gnss-receiver');
  expect(refusalOf('set-sheet', { sheet: { ...sheet, ports: [] } })?.says).toContain('n2k');
  const named = edits['set-sheet'].apply(tern, { sheet: { ...sheet, name: 'Position antenna' } });
  expect(named.sheets.find(({ id }) => id === 'gnss-receiver')?.name).toBe('Position antenna');
  expect(refusalOf('set-sheet', { sheet: { ...sheet, id: 'no-sheet' } })?.says).toContain('no-sheet');
});

test('what a recording heard comes aboard with its sheets, on the backbone there is or on one made for it', () => {
  const [typical] = typicalSheets.filter(({ id }) => id === 'wind-sensor-bus');
  const sheet = { ...typical, id: 'heard-wind', source: 'recording' as const };
  const unit = { id: 'wind', name: 'Wind', sheet: 'heard-wind', fate: 'stays', place: 'mast-base' } as const;
  const heard = { bus: 'nav', port: 'n2k', sheets: [sheet], units: [unit] };
  const after = edits['add-heard'].apply(tern, heard);
  expect(after.kit.at(-1)).toEqual(unit);
  expect(after.joins.find(({ bus }) => bus === 'nav')?.members).toContainEqual({
    kit: 'wind',
    port: 'n2k',
    as: 'both',
  });
  const bare = edits['add-heard'].apply(aBoat().with({ joins: [] }).boat, { ...heard, bus: 'second' });
  expect(bare.buses.map(({ id }) => id)).toContain('second');
  expect(bare.joins.map(({ bus }) => bus)).toEqual(['second']);
  expect(refusalOf('add-heard', { ...heard, units: [] })?.says).toBeDefined();
});
