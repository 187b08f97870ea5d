import { expect, test } from 'vitest';
import { aBoat } from '../a-boat.test-helper.ts';
import { edits } from './index.ts';
import { refusalOf } from './refusal-of.test-helper.ts';

const tern = aBoat().boat;

test('a join that is forbidden stands in the file so, and is no join', () => {
  const members = [
    { kit: 'converter', port: 'out', as: 'talk' as const },
    { kit: 'radio', port: 'gps-in', as: 'listen' as const },
  ];
  const after = edits['forbid-join'].apply(tern, { kind: 'nmea0183', members });
  expect(after.joins.at(-1)).toEqual({ id: 'never-converter-radio', kind: 'nmea0183', members, hold: 'never' });
});

test('a bus keeps its join when one of its units is taken out', () => {
  const boat = edits['remove-unit'].apply(tern, { unit: 'gnss' });
  expect(boat.joins[0]?.members.map((member) => member.kit)).toEqual(['compass', 'converter', 'display']);
});

test('a port put on a backbone joins those that are on it, and makes the first join where there is none', () => {
  const out = aBoat().change((boat) => {
    boat.joins[0]?.members.pop();
  }).boat;
  expect(edits['join-bus'].apply(out, { port: 'gnss.n2k', bus: 'nav' })).toEqual(tern);
  const bare = aBoat().with({ joins: [] }).boat;
  expect(edits['join-bus'].apply(bare, { port: 'gnss.n2k', bus: 'nav' }).joins).toEqual([
    {
      id: 'nav-join',
      kind: 'nmea2000',
      bus: 'nav',
      members: [{ kit: 'gnss', port: 'n2k', as: 'both' }],
      hold: 'fixed',
    },
  ]);
  expect(refusalOf('join-bus', { port: 'radio.gps-in', bus: 'nav' })?.says).toBe(
    'The join "nav-join" is nmea2000, and the port "radio.gps-in" is nmea0183.',
  );
});

test('a second listener is added to the join its talker speaks in', () => {
  const second = aBoat().add({
    kit: [{ id: 'radio-aft', name: 'Radio aft', sheet: 'fixed-radio', fate: 'stays', place: 'helm' }],
  }).boat;
  const boat = edits['join-ports'].apply(second, { from: 'converter.out', to: 'radio-aft.gps-in' });
  expect(boat.joins).toHaveLength(2);
  expect(boat.joins[1]?.members.map(({ kit, as }) => [kit, as])).toEqual([
    ['converter', 'talk'],
    ['radio', 'listen'],
    ['radio-aft', 'listen'],
  ]);
  const first = edits['join-ports'].apply(aBoat().change((draft) => draft.joins.pop()).boat, {
    from: 'converter.out',
    to: 'radio.gps-in',
  });
  expect(first.joins[1]?.id).toBe('converter-to-radio');
  expect(refusalOf('join-ports', { from: 'gnss.n2k', to: 'radio.gps-in' })?.says).toBe(
    'gnss.n2k is nmea2000 and radio.gps-in is nmea0183; they cannot be wired to each other.',
  );
});
