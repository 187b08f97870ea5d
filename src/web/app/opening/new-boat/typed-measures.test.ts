import { expect, test } from 'vitest';
import { boatFromPattern } from '../../../../core/starting/boat-from-pattern.ts';
import { askedBy, typedMeasures } from './typed-measures.ts';

test('what is left empty is suggested from a length in either unit', () => {
  expect(typedMeasures('ketch', { lengthM: '39 ft' })).toEqual(
    typedMeasures('ketch', { lengthM: '11.8872', beamM: '' }),
  );
  expect(typedMeasures('ketch', { lengthM: '39 ft' })[1]).toEqual({ key: 'beamM', valueM: 3.65, from: 'suggested' });
});

test('what is typed counts and the rest follows the length, not it', () => {
  const rows = typedMeasures('ketch', { lengthM: '12', beamM: '13 ft' });
  expect(rows.map(({ from }) => from)).toEqual(['typed', 'typed', 'suggested', 'suggested']);
  expect(rows[1]?.valueM).toBeCloseTo(3.962, 3);
  expect(rows[2]?.valueM).toBe(1.8);
});

test('what cannot be read is said to be wrong, and the suggestion stands meanwhile', () => {
  expect(typedMeasures('ketch', { lengthM: '12', draftM: 'deep' })[2]).toEqual({
    key: 'draftM',
    valueM: 1.8,
    from: 'wrong',
  });
});

test('a boat asked for with a length alone has the air draft guessed, and with one typed it is known', () => {
  const bare = boatFromPattern(askedBy({ pattern: 'ketch', name: 'Kittiwake', texts: { lengthM: '12' } }));
  expect(bare.hull).toMatchObject({ lengthM: 12, airDraft: { how: 'guessed' } });
  const told = boatFromPattern(askedBy({ pattern: 'ketch', name: 'Kittiwake', texts: { airDraftM: '16 m' } }));
  expect(told.hull).toMatchObject({ lengthM: 12.5, airDraft: { valueM: 16, how: 'papers' } });
});
