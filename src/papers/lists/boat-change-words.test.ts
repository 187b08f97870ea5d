import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { edits } from '../../core/boat/edits/index.ts';
import { mergeBoats } from '../../core/boat/merge/merge-boats.ts';
import { boatChangeWords, conflictWords } from './boat-change-words.ts';

const tern = aBoat().boat;
const movedTo = (place: string) => edits['move-unit'].apply(tern, { unit: 'gnss', place });

test('what changed between two saved states is said thing by thing', () => {
  const taped = edits['tape-length'].apply(movedTo('helm'), {
    way: 'locker-helm',
    length: { valueM: 2.35, how: 'taped' },
  });
  const after = edits['remove-unit'].apply(taped, { unit: 'radio' });
  const words = boatChangeWords({ before: tern, after }, 20);
  expect(words).toContain('GNSS on the stern rail: place.');
  expect(words).toContain('Electrical locker to helm dash: length.');
  expect(words).toContain('Old radio: taken out.');
  expect(boatChangeWords({ before: tern, after }, 1)).toMatch(/^[^.]+\. And \d more\.$/);
});

test('a need and a setting of the boat are called by what they are', () => {
  const after = edits['add-need'].apply(tern, { reading: 'depth', at: 'radio', must: true });
  expect(boatChangeWords({ before: tern, after })).toBe('Need of depth at Old radio: added.');
  const named = edits['set-waters'].apply(tern, { waters: 'harbour' });
  expect(boatChangeWords({ before: tern, after: named })).toBe('Waters.');
  expect(boatChangeWords({ before: tern, after: tern })).toBe('');
});

test('a conflict says what it is about and what each version holds', () => {
  const [ours, theirs] = [movedTo('helm'), movedTo('locker')];
  const { conflicts } = mergeBoats({ base: tern, ours, theirs });
  expect(conflictWords(conflicts, { ours, theirs })).toEqual([
    { key: 'kit/gnss/place', about: 'GNSS on the stern rail: place', ours: 'helm dash', theirs: 'electrical locker' },
  ]);
});

test('a thing that one took out and what does not fit together are told as such', () => {
  const ours = edits['remove-unit'].apply(tern, { unit: 'gnss' });
  const theirs = movedTo('helm');
  const gone = mergeBoats({ base: tern, ours, theirs });
  expect(conflictWords(gone.conflicts, { ours, theirs })[0]).toMatchObject({
    about: 'GNSS on the stern rail',
    ours: 'not there',
    theirs: 'GNSS on the stern rail',
  });
  const need = edits['add-need'].apply(tern, { reading: 'depth', at: 'gnss', must: true });
  const apart = mergeBoats({ base: tern, ours, theirs: need });
  expect(conflictWords(apart.conflicts, { ours, theirs: need })[0]?.about).toContain('does not fit together');
});
