import type { Draft } from 'mutative';
import { expect, test } from 'vitest';
import { aBoat } from '../a-boat.test-helper.ts';
import { sentenceOf } from '../boat-problem.ts';
import type { Boat } from '../boat-schema.ts';
import { checkReferences } from '../check-references.ts';
import { placeInFile } from '../place-in-file.ts';
import type { Port } from '../sheet.ts';

type Recipe = (boat: Draft<Boat>) => void;

const told = (recipe: Recipe): string[] =>
  checkReferences(aBoat().change(recipe).boat).map((problem) => `${placeInFile(problem.path)}: ${sentenceOf(problem)}`);

/** Adds a sheet with one port and two units of it, a and b, on the helm. */
const withTwo = (boat: Draft<Boat>, port: Omit<Port, 'id' | 'onPlug'>): void => {
  boat.sheets.push({
    id: 'thing',
    name: 'Thing',
    kind: 'thing',
    source: 'typical',
    plugs: [{ id: 'plug', connector: 'leads', gender: 'none' }],
    ports: [{ id: 'p', onPlug: 'plug', ...port }],
  });
  for (const id of ['a', 'b', 'c']) boat.kit.push({ id, name: id, sheet: 'thing', fate: 'comes', place: 'helm' });
};

const joinOf = (
  boat: Draft<Boat>,
  kind: Boat['joins'][number]['kind'],
  ...members: [string, 'talk' | 'listen' | 'both'][]
) => boat.joins.push({ id: 'j', kind, members: members.map(([kit, as]) => ({ kit, port: 'p', as })), hold: 'fixed' });

const whole = { hold: 'fixed' } as const;

test.each<[string, Recipe, string]>([
  [
    'without its bus',
    (boat) => boat.joins.push({ ...whole, id: 'j', kind: 'nmea2000', members: [] }),
    'joins[2]: The join "j" does not say which bus its units are on.',
  ],
  [
    'on a bus that is not there',
    (boat) => boat.joins.push({ ...whole, id: 'j', kind: 'nmea2000', bus: 'nva', members: [] }),
    'joins[2].bus: There is no bus "nva"; did you mean `nav`?',
  ],
  [
    'of wires on a bus',
    (boat) => boat.joins.push({ ...whole, id: 'j', kind: 'wifi', bus: 'nav', members: [] }),
    'joins[2].bus: Only an nmea2000 join is on a bus, and "j" is wifi.',
  ],
  [
    'of a port that is not there',
    (boat) => boat.joins[0]?.members.push({ kit: 'radio', port: 'n2k', as: 'both' }),
    'joins[0].members[4]: There is no port "n2k" of "radio".',
  ],
  [
    'of a unit that is not there',
    (boat) => boat.joins[0]?.members.push({ kit: 'plotter', port: 'n2k', as: 'both' }),
    'joins[0].members[4]: There is no unit "plotter".',
  ],
  [
    'of ports that speak differently',
    (boat) => boat.joins[0]?.members.push({ kit: 'radio', port: 'gps-in', as: 'both' }),
    'joins[0].members[4]: The join "nav-join" is nmea2000, and the port "radio.gps-in" is nmea0183.',
  ],
  [
    'of one port twice',
    (boat) => boat.joins[0]?.members.push({ kit: 'gnss', port: 'n2k', as: 'both' }),
    'joins[0].members[4]: The port "gnss.n2k" is in the join "nav-join" twice.',
  ],
  [
    'with a unit on the bus as talker only',
    (boat) => {
      for (const member of boat.joins[0]?.members.slice(0, 1) ?? []) member.as = 'talk';
    },
    'joins[0].members: A join of kind nmea2000 has any number of units, each as both; "nav-join" does not.',
  ],
  [
    'with two talkers on one pair',
    (boat) => {
      withTwo(boat, { protocol: 'nmea0183', role: 'talk' });
      joinOf(boat, 'nmea0183', ['a', 'talk'], ['b', 'talk']);
    },
    'joins[2].members: A join of kind nmea0183 has one unit as talk and one or more as listen; "j" does not.',
  ],
  [
    'with three ends of one Ethernet cable',
    (boat) => {
      withTwo(boat, { protocol: 'ethernet', role: 'both' });
      joinOf(boat, 'ethernet', ['a', 'both'], ['b', 'both'], ['c', 'both']);
    },
    'joins[2].members: A join of kind ethernet has exactly two units, each as both; "j" does not.',
  ],
  [
    'with two listeners on one coax',
    (boat) => {
      withTwo(boat, { protocol: 'coax', role: 'both' });
      joinOf(boat, 'coax', ['a', 'talk'], ['b', 'listen'], ['c', 'listen']);
    },
    'joins[2].members: A join of kind coax has one unit as talk and one as listen; "j" does not.',
  ],
  [
    'with a listener that is made to talk',
    (boat) => {
      withTwo(boat, { protocol: 'single-wire', role: 'listen' });
      joinOf(boat, 'single-wire', ['a', 'talk'], ['b', 'listen']);
    },
    'joins[2].members[0].as: The port "a.p" can only listen, and the join "j" has it talk.',
  ],
])('a join %s is refused', (_, recipe, expected) => {
  expect(told(recipe)).toEqual([expected]);
});

test('one talker may have many listeners, and wifi any number of units in any way', () => {
  expect(
    told((boat) => {
      withTwo(boat, { protocol: 'modbus', role: 'both' });
      joinOf(boat, 'modbus', ['a', 'talk'], ['b', 'listen'], ['c', 'listen']);
      boat.joins.push({ ...whole, id: 'air', kind: 'wifi', members: [] });
    }),
  ).toEqual([]);
});
