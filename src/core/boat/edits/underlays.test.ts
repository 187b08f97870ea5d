import { expect, test } from 'vitest';
import { aBoat } from '../a-boat.test-helper.ts';
import { UserError } from '../user-error.ts';
import { edits } from './index.ts';

const tern = aBoat().boat;
const underlay = {
  view: 'side',
  picture: { hash: 'ab'.repeat(32), type: 'jpeg', widthPx: 2000, heightPx: 900 },
  from: { xPx: 0, yPx: 450, alongM: 0, acrossM: 0 },
  to: { xPx: 2000, yPx: 450, alongM: 8.4, acrossM: 0 },
} as const;

const asGiven = edits['set-underlay'].params.parse(underlay);

test('a picture is put under a view, fitted, hidden and taken away', () => {
  const once = edits['set-underlay'].apply(tern, underlay);
  expect(once.underlays).toEqual([underlay]);
  expect(edits['set-underlay'].title(asGiven, tern)).toBe('Put a picture under the boat from the side.');
  expect(edits['set-underlay'].title(asGiven, once)).toBe('Fit the picture from the side.');
  const hidden = edits['set-underlay'].apply(once, { ...underlay, hidden: true });
  expect(hidden.underlays).toHaveLength(1);
  expect(edits['set-underlay'].title({ ...asGiven, hidden: true }, once)).toBe('Hide the picture from the side.');
  expect(edits['set-underlay'].title(asGiven, hidden)).toBe('Show the picture from the side.');
  const both = edits['set-underlay'].apply(once, { ...underlay, view: 'top' });
  expect(both.underlays?.map(({ view }) => view)).toEqual(['side', 'top']);
  expect(edits['remove-underlay'].apply(once, { view: 'side' })).toEqual(tern);
  expect(() => edits['remove-underlay'].apply(once, { view: 'top' })).toThrow(
    'There is no picture under the boat from above.',
  );
});

test('two points that are one set no scale, and a picture is named by its bytes', () => {
  const { from: one } = underlay;
  const refused = (given: unknown): string => {
    try {
      edits['set-underlay'].apply(tern, given);
      return '';
    } catch (error) {
      return error instanceof UserError ? error.says : String(error);
    }
  };
  expect(refused({ ...underlay, to: { ...one, alongM: 3 } })).toContain('The two points of the picture are one');
  expect(refused({ ...underlay, to: { ...one, xPx: 30 } })).toContain('at one place aboard');
  expect(refused({ ...underlay, picture: { ...underlay.picture, hash: '../../elsewhere' } })).toContain(
    '`hash` cannot be',
  );
});
