import { expect, test } from 'vitest';
import { aFullBoat } from '../full-boat.test-helper.ts';
import { applyEdits, type EditCall } from '../history.ts';
import { readBoat } from '../read-boat.ts';
import { applyChanges } from '../sheet-changes.ts';
import { startHistory } from '../start-history.ts';
import { UserError } from '../user-error.ts';
import { writeBoat } from '../write-boat.ts';

const full = aFullBoat();
const after = (...calls: EditCall[]) => applyEdits(startHistory(full), calls);
const unitOf = (boat: typeof full, id: string) => boat.kit.find((unit) => unit.id === id);

test('what is noted of a unit is put beside what was, and a setting without value is forgotten', () => {
  const { boat, done } = after({
    edit: 'note-aboard',
    params: {
      unit: 'display',
      software: '3.2',
      settings: [{ name: 'alarm limits' }, { name: 'damping', value: '4 s' }],
      forget: ['copied'],
    },
  });
  expect(unitOf(boat, 'display')?.aboard).toEqual({
    serial: '0042-117',
    software: '3.2',
    settings: [
      { name: 'damping', value: '4 s' },
      { name: 'keel offset', value: '-1.2 m' },
    ],
  });
  expect(done.at(-1)?.title).toBe(
    'Helm display: software and damping noted, alarm limits and whether all is copied not noted.',
  );
  expect(readBoat(writeBoat(boat))).toEqual(boat);
});

test('no title tells a value, for some are nobody else’s', () => {
  const { done } = after({
    edit: 'note-aboard',
    params: { unit: 'radio', serial: 'X99-1', settings: [{ name: 'MMSI', value: '002345678' }] },
  });
  expect(done.at(-1)?.title).toBe('Old radio: serial number and MMSI noted.');
});

test('with the last that was noted forgotten nothing of it stays in the file', () => {
  const { boat } = after({
    edit: 'note-aboard',
    params: {
      unit: 'display',
      settings: [{ name: 'alarm limits' }, { name: 'keel offset' }],
      forget: ['serial', 'software', 'copied'],
    },
  });
  expect(unitOf(boat, 'display')).not.toHaveProperty('aboard');
});

test('a plug seen aboard is changed for that unit alone, and its wires keep what they are for', () => {
  const { boat, done } = after({
    edit: 'see-plug',
    params: {
      unit: 'radio',
      plug: 'wires',
      connector: 'round, 6 pins',
      gender: 'female',
      colours: [{ label: 'A', colour: 'brown' }],
    },
  });
  const radio = unitOf(boat, 'radio');
  const sheet = boat.sheets.find(({ id }) => id === radio?.sheet);
  expect(sheet).toEqual(full.sheets.find(({ id }) => id === radio?.sheet));
  const seen = sheet === undefined ? [] : applyChanges(sheet, radio?.changes ?? []).plugs;
  expect(seen.find(({ id }) => id === 'wires')).toMatchObject({
    connector: 'round, 6 pins',
    gender: 'female',
    conductors: [
      { label: 'A', colour: 'brown', role: 'A', ports: ['gps-in'] },
      { label: 'B', colour: 'green', role: 'B' },
    ],
  });
  expect(done.at(-1)?.title).toBe('Plug wires of Old radio: round, 6 pins, female, A brown, seen.');
  expect(readBoat(writeBoat(boat))).toEqual(boat);
});

test('a plug that its sheet does not have is refused, with the nearest', () => {
  const see = () => after({ edit: 'see-plug', params: { unit: 'radio', plug: 'wire', gender: 'male' } });
  expect(see).toThrow(UserError);
  expect(see).toThrow(/wires/);
});
