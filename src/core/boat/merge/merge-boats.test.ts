import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../a-boat.test-helper.ts';
import type { Boat } from '../boat-schema.ts';
import { canonicalBoat } from '../canonical-boat.ts';
import { edits } from '../edits/index.ts';
import { plausibleEdit } from '../edits/plausible-edit.test-helper.ts';
import { aFullBoat } from '../full-boat.test-helper.ts';
import { applyEdits, type EditCall } from '../history.ts';
import { readBoat } from '../read-boat.ts';
import { startHistory } from '../start-history.ts';
import { UserError } from '../user-error.ts';
import { writeBoat } from '../write-boat.ts';
import { type MergeChoice, mergeBoats, togetherKey } from './merge-boats.ts';

const tern = aBoat().boat;
const full = aFullBoat();

const moved = (boat: Boat, unit: string, place: string): Boat => edits['move-unit'].apply(boat, { unit, place });
const placeOf = (boat: Boat, unit: string) => boat.kit.find(({ id }) => id === unit)?.place;

test('what one side changed and what the other changed are both in the boat put together', () => {
  const ours = moved(tern, 'radio', 'locker');
  const theirs = edits['tape-length'].apply(tern, { way: 'locker-helm', length: { valueM: 2.35, how: 'taped' } });
  const { boat, conflicts } = mergeBoats({ base: tern, ours, theirs });
  expect(conflicts).toEqual([]);
  expect(placeOf(boat, 'radio')).toBe('locker');
  expect(boat.ways.find(({ id }) => id === 'locker-helm')?.length.valueM).toBe(2.35);
});

test('two fields of one unit, changed one by each, clash as little as two units do', () => {
  const ours = moved(tern, 'gnss', 'helm');
  const theirs = edits['set-fate'].apply(tern, { unit: 'gnss', fate: 'goes' });
  const { boat, conflicts } = mergeBoats({ base: tern, ours, theirs });
  expect(conflicts).toEqual([]);
  expect(boat.kit.find(({ id }) => id === 'gnss')).toMatchObject({ place: 'helm', fate: 'goes' });
});

test('one field changed by both is a conflict, ours until theirs is chosen', () => {
  const [ours, theirs] = [moved(tern, 'gnss', 'helm'), moved(tern, 'gnss', 'locker')];
  const { boat, conflicts } = mergeBoats({ base: tern, ours, theirs });
  expect(conflicts).toMatchObject([{ key: 'kit/gnss/place', ours: 'helm', theirs: 'locker' }]);
  expect(placeOf(boat, 'gnss')).toBe('helm');
  const chosen = mergeBoats({ base: tern, ours, theirs, choices: { 'kit/gnss/place': 'theirs' } });
  expect(placeOf(chosen.boat, 'gnss')).toBe('locker');
});

test('a unit taken out by one and moved by the other is a conflict about the whole unit', () => {
  const ours = edits['remove-unit'].apply(tern, { unit: 'gnss' });
  const { boat, conflicts } = mergeBoats({ base: tern, ours, theirs: moved(tern, 'gnss', 'helm') });
  expect(conflicts).toMatchObject([{ key: 'kit/gnss', theirs: { id: 'gnss', place: 'helm' } }]);
  expect(conflicts[0]).not.toHaveProperty('ours');
  expect(placeOf(boat, 'gnss')).toBeUndefined();
});

test('a need at a screen that the other took out does not fit, and either version can be had', () => {
  const reading = { reading: 'depth', at: 'radio', must: true } as const;
  const ours = edits['remove-unit'].apply(tern, { unit: 'radio' });
  const theirs = edits['add-need'].apply(tern, reading);
  const { boat, conflicts } = mergeBoats({ base: tern, ours, theirs });
  expect(conflicts.map(({ key }) => key)).toEqual([togetherKey]);
  expect(boat.needs.some(({ at }) => at === 'radio')).toBe(false);
  const other = mergeBoats({ base: tern, ours, theirs, choices: { [togetherKey]: 'theirs' } }).boat;
  expect(other.needs.some(({ at }) => at === 'radio')).toBe(true);
  expect(placeOf(other, 'radio')).toBeDefined();
});

test('changes that wait for one another are all taken: a sheet, a unit by it, and its join', () => {
  const ours = moved(tern, 'radio', 'locker');
  const added = edits['add-unit'].apply(tern, {
    id: 'new-wind',
    name: 'Wind',
    sheet: 'wind-sensor-bus',
    fate: 'comes',
    place: 'helm',
  });
  const theirs = edits['join-bus'].apply(added, { port: 'new-wind.n2k', bus: 'nav' });
  const { boat, conflicts } = mergeBoats({ base: tern, ours, theirs });
  expect(conflicts).toEqual([]);
  expect(boat.joins.some(({ members }) => members.some(({ kit }) => kit === 'new-wind'))).toBe(true);
});

/** A boat with some edits made in it, each by chance and as far as it fits. */
const edited = (base: Boat, given: readonly number[]): Boat =>
  given.reduce((boat, seed) => {
    const [call] = fc.sample(plausibleEdit(boat), { numRuns: 1, seed });
    try {
      // reason: a sample of one has one
      return applyEdits(startHistory(boat), [call as EditCall]).boat;
    } catch (error) {
      if (error instanceof UserError) return boat;
      throw error;
    }
  }, base);

const seeds = fc.array(fc.nat(1_000_000), { minLength: 1, maxLength: 5 });

test('a boat merged with the one it comes from, or with itself, is that boat to the byte', { timeout: 120_000 }, () => {
  fc.assert(
    fc.property(seeds, (made) => {
      const boat = edited(full, made);
      for (const versions of [
        { base: full, ours: boat, theirs: full },
        { base: full, ours: full, theirs: boat },
        { base: full, ours: boat, theirs: boat },
      ]) {
        const merged = mergeBoats(versions);
        expect(writeBoat(merged.boat)).toBe(writeBoat(boat));
        expect(merged.conflicts).toEqual([]);
      }
    }),
    { numRuns: 25 },
  );
});

test('where nothing clashes it does not matter which side is which, and every merge can be saved and read', {
  timeout: 120_000,
}, () => {
  fc.assert(
    fc.property(seeds, seeds, fc.constantFrom<MergeChoice>('ours', 'theirs'), (mine, others, choice) => {
      const [ours, theirs] = [edited(full, mine), edited(full, others)];
      const [one, other] = [
        mergeBoats({ base: full, ours, theirs }),
        mergeBoats({ base: full, ours: theirs, theirs: ours }),
      ];
      expect(readBoat(writeBoat(one.boat))).toEqual(one.boat);
      if (one.conflicts.length === 0) {
        expect(other.conflicts).toEqual([]);
        expect(writeBoat(canonicalBoat(other.boat))).toBe(writeBoat(canonicalBoat(one.boat)));
      }
      const choices = Object.fromEntries(one.conflicts.map(({ key }) => [key, choice]));
      const chosen = mergeBoats({ base: full, ours, theirs, choices }).boat;
      expect(readBoat(writeBoat(chosen))).toEqual(chosen);
    }),
    { numRuns: 40 },
  );
});

test('whatever both changed, choosing one side for all of it keeps all that side says', { timeout: 120_000 }, () => {
  fc.assert(
    fc.property(seeds, seeds, (mine, others) => {
      const [ours, theirs] = [edited(full, mine), edited(full, others)];
      const { conflicts } = mergeBoats({ base: full, ours, theirs });
      const choices = Object.fromEntries([...conflicts.map(({ key }) => [key, 'theirs']), [togetherKey, 'theirs']]);
      const chosen = mergeBoats({ base: full, ours, theirs, choices }).boat;
      // nothing of theirs is left to take in
      const again = mergeBoats({ base: full, ours: chosen, theirs });
      expect(writeBoat(canonicalBoat(again.boat))).toBe(writeBoat(canonicalBoat(chosen)));
    }),
    { numRuns: 40 },
  );
});
