import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { plausibleEdit } from '../boat/edits/plausible-edit.test-helper.ts';
import { applyEdits } from '../boat/history.ts';
import { startHistory } from '../boat/start-history.ts';
import { UserError } from '../boat/user-error.ts';
import { arrivals } from '../readings/arrivals.ts';
import { beforeOf } from '../readings/before-and-after.ts';
import { refitOf } from '../readings/refit.ts';
import { joinedRefit } from './joined-refit.ts';
import { joinsOf } from './joins-of.ts';

const { boat } = aBoat();
const renamed: Boat = { ...boat, kit: boat.kit.map((unit) => ({ ...unit, name: `${unit.name}, other` })) };
const found = (own: Boat, phase = 1) => joinedRefit(indexBoat(own)).reachesIn(phase);

test('where readings get to is known again where units are called or stand otherwise, and speaks of the boat asked about', () => {
  expect(found(renamed).of).toBe(found(boat).of);
  expect(found(renamed).network.index.boat).toBe(renamed);
});

test('it is found anew where a join is gone, or a sheet says otherwise', () => {
  expect(found({ ...boat, joins: boat.joins.slice(1) }).of).not.toBe(found(boat).of);
  const other = boat.sheets.map((sheet) => ({ ...sheet, ports: sheet.ports.slice(1) }));
  expect(found({ ...boat, sheets: other }).of).not.toBe(found(boat).of);
});

test('after edit upon edit all arrives just as in a boat that is followed from nothing', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 1_000_000 }), { minLength: 1, maxLength: 6 }), (seeds) => {
      let history = startHistory(boat);
      for (const seed of seeds) {
        const [call] = fc.sample(plausibleEdit(history.boat), { numRuns: 1, seed });
        try {
          history = applyEdits(history, call === undefined ? [] : [call]);
        } catch (error) {
          if (!(error instanceof UserError)) throw error;
        }
        const index = indexBoat(history.boat);
        const [known, anew] = [joinedRefit(index), refitOf(index, (phase) => joinsOf(index, phase))];
        expect(arrivals(known, 1)).toEqual(arrivals(anew, 1));
        expect(beforeOf(known)).toEqual(beforeOf(anew));
      }
    }),
    { numRuns: 10 },
  );
});
