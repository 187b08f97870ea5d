import { expect, test } from 'vitest';
import { aBoat } from '../a-boat.test-helper.ts';
import { aFullBoat } from '../full-boat.test-helper.ts';
import { edits } from './index.ts';
import { refusalOf } from './refusal-of.test-helper.ts';

const tern = aBoat().boat;

test('the boat’s own measures are said one by one, and what is forgotten leaves nothing behind', () => {
  const said = edits['set-measures'].apply(tern, { wavesM: 0.4 });
  const more = edits['set-measures'].apply(said, { doubtM: 0.6 });
  expect(more.measures).toEqual({ wavesM: 0.4, doubtM: 0.6 });
  expect(edits['set-measures'].apply(more, { forget: ['wavesM', 'doubtM'] })).toEqual(tern);
});

test('the depth of a transducer stands once a unit', () => {
  const below = (valueM: number) => ({ unit: 'compass', below: { valueM, how: 'taped' } });
  const said = edits['set-transducer'].apply(edits['set-transducer'].apply(tern, below(0.4)), below(0.5));
  expect(said.measures?.transducers).toEqual([below(0.5)]);
  expect(edits['set-transducer'].apply(said, { unit: 'compass' })).toEqual(tern);
  expect(refusalOf('set-transducer', { unit: 'nobody' })).toBeDefined();
});

test('what stands in a unit is noted, noted anew, and forgotten', () => {
  const typed = { unit: 'display', what: 'safety-depth' };
  const said = edits['note-typed'].apply(tern, { ...typed, is: { figure: 2.75, in: 'm' } });
  expect(said.measures?.typed).toEqual([{ ...typed, figure: 2.75, in: 'm' }]);
  expect(edits['note-typed'].apply(said, typed)).toEqual(tern);
  expect(edits['note-typed'].ready({ ...typed, is: { figure: 9, in: 'ft' } }).title(tern)).toBe(
    'Helm display, safety depth: 9 ft stands there.',
  );
});

test('a screen is said in its units, and papers where they stand', () => {
  const said = edits['set-screen-units'].apply(tern, { unit: 'display', depth: 'ft' });
  expect(said.measures?.screens).toEqual([{ unit: 'display', depth: 'ft' }]);
  expect(edits['set-screen-units'].apply(said, { unit: 'display' })).toEqual(tern);
  const asked = edits['note-paperwork'].apply(tern, { paper: 'ship-number', stands: { state: 'asked' } });
  expect(asked.papers?.paperwork).toEqual([{ paper: 'ship-number', state: 'asked' }]);
  expect(edits['note-paperwork'].apply(asked, { paper: 'ship-number' })).toEqual(tern);
});

test('the digits of a ship’s number stand in no title of an edit', () => {
  const number = { digits: '000123456', from: 'state', readBackBy: 'the mate' };
  const ready = edits['set-papers'].ready({ number });
  expect(ready.title(tern)).toBe('Papers: ship’s number.');
  expect(edits['set-papers'].apply(tern, { number }).papers).toEqual({ number });
  expect(refusalOf('set-papers', { number: { digits: '12345', from: 'state' } })).toBeDefined();
});

test('a trial at sea is noted in place of the one with its id, and taken back', () => {
  const lead = { id: 'lead', unit: 'compass', on: '2027-06-01', leadM: 4.6, shownM: 4, offsetM: 0 };
  const said = edits['note-at-sea'].apply(edits['note-at-sea'].apply(tern, { lead }), { lead: { ...lead, leadM: 5 } });
  expect(said.sea?.leads).toEqual([{ ...lead, leadM: 5 }]);
  expect(edits['take-back-at-sea'].apply(said, { kind: 'leads', id: 'lead' })).toEqual(tern);
  expect(
    refusalOf('note-at-sea', { lead, bridge: { id: 'b', on: '2027-06-01', name: 'B', chartedM: 9 } }),
  ).toBeDefined();
  expect(refusalOf('take-back-at-sea', { kind: 'leads', id: 'nothing' })).toBeDefined();
});

test('with a unit goes what was measured of it and tried with it', () => {
  const boat = edits['remove-unit'].apply(aFullBoat(), { unit: 'compass' });
  expect(boat.sea).toEqual({ bridges: aFullBoat().sea?.bridges });
  expect(boat.measures?.transducers?.map(({ unit }) => unit)).toEqual(['radio']);
});
