import { expect, test } from 'vitest';
import { indexBoat } from '../boat/boat-index.ts';
import type { Sheet } from '../boat/sheet.ts';
import { joinsOf } from '../joins/joins-of.ts';
import { refitOf } from '../readings/refit.ts';
import { type Sketch, wired } from '../readings/wired.test-helper.ts';
import { planLighting } from './plan-lighting.ts';

const n2k = { protocol: 'nmea2000', role: 'both' } as const;
const eth = { protocol: 'ethernet', role: 'both' } as const;
type Lighting = NonNullable<Sheet['lighting']>;
const group = (dialect: string): Lighting => ({ dims: 'with-group', dialect });

const groupsOf = (sketch: Sketch, said: Readonly<Record<string, Lighting>>) => {
  const boat = wired(sketch);
  const sheets = boat.sheets.map((sheet) => {
    const lighting = said[sheet.id.replace('sheet-', '')];
    return lighting === undefined ? sheet : { ...sheet, lighting };
  });
  const index = indexBoat({ ...boat, sheets });
  const { network } = refitOf(index, (at) => joinsOf(index, at)).reachesIn(1);
  return Object.fromEntries(
    planLighting(network).lighting.flatMap(({ screens }) => screens.map((screen) => [screen.kit, screen.group])),
  );
};

const two: Sketch = { units: { a: { ports: { n2k } }, b: { ports: { n2k } } }, joins: { nav: ['a.n2k', 'b.n2k'] } };

test('screens of one language on one bus dim together', () => {
  expect(groupsOf(two, { a: group('maker-a/2'), b: group('maker-a/2') })).toEqual({ a: 'a', b: 'a' });
});

test('another language, another generation or another bus is apart', () => {
  expect(groupsOf(two, { a: group('maker-a/2'), b: group('maker-b/2') })).toEqual({ a: 'a', b: 'b' });
  expect(groupsOf(two, { a: group('maker-a/2'), b: group('maker-a/1') })).toEqual({ a: 'a', b: 'b' });
  const apart = { ...two, joins: { nav: ['a.n2k'], ship: ['b.n2k'] } };
  expect(groupsOf(apart, { a: group('maker-a/2'), b: group('maker-a/2') })).toEqual({ a: 'a', b: 'b' });
});

test('a knob of its own, no language and an unknown generation are no group', () => {
  const said = { a: { dims: 'own-knob', dialect: 'maker-a/2' }, b: { dims: 'with-group' } } as const;
  expect(groupsOf(two, said)).toEqual({ a: undefined, b: undefined });
  expect(groupsOf(two, { a: group('maker-a/unknown'), b: group('maker-a/unknown') })).toEqual({
    a: undefined,
    b: undefined,
  });
});

test('messages go through a switch and not through a converter', () => {
  const hub = { ports: { p1: eth, p2: eth }, together: [['p1', 'p2']] };
  const ends = { a: { ports: { eth } }, b: { ports: { eth } } };
  const joins = { one: ['a.eth', 'hub.p1'], two: ['hub.p2', 'b.eth'] };
  const said = { a: group('maker-a/2'), b: group('maker-a/2') };
  expect(groupsOf({ units: { ...ends, hub }, joins }, said)).toEqual({ a: 'a', b: 'a' });
  expect(groupsOf({ units: { ...ends, hub: { ports: hub.ports } }, joins }, said)).toEqual({ a: 'a', b: 'b' });
});
