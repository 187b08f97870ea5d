import { expect, test } from 'vitest';
import { aBoat } from './a-boat.test-helper.ts';
import { boatSchema } from './boat-schema.ts';

test('the small boat that the tests use is a valid boat file', () => {
  expect(boatSchema.safeParse(aBoat().boat).error?.issues).toBeUndefined();
});

test('a changed unit leaves the boat it was made from alone', () => {
  const before = JSON.stringify(aBoat().boat);
  const moved = aBoat()
    .unit('gnss', { place: 'helm' })
    .change((boat) => {
      boat.name = 'Skua';
    })
    .sheet('gnss-receiver', (sheet) => {
      sheet.name = 'Old receiver';
    }).boat;
  expect(moved.kit.find((unit) => unit.id === 'gnss')?.place).toBe('helm');
  expect(moved.name).toBe('Skua');
  expect(JSON.stringify(aBoat().boat)).toBe(before);
});

test('a send that names neither a PGN, a sentence nor a reading is refused', () => {
  const boat = aBoat().sheet('gnss-receiver', (sheet) => {
    sheet.ports[0]?.sends?.push({ everyMs: 1000 });
  }).boat;
  expect(boatSchema.safeParse(boat).error?.issues[0]?.message).toBe('Give exactly one of pgn, sentence, reading.');
});
