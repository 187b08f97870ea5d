import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { CompassFeed } from '../../compass-shape.ts';
import type { HeadingNear, HeadingSite } from '../../heading-shape.ts';
import { told as toldBy } from '../told.test-helper.ts';
import { feedTooNear } from './compass-case.test-helper.ts';
import { soundHeading } from './heading-case.test-helper.ts';
import { compassRules } from './index.ts';

const heading = (id: string, own: Partial<HeadingSite>, boat: Boat = aBoat().boat, places = ['locker']) =>
  toldBy(compassRules, `compass/${id}`, {
    boat,
    plan: {
      sites: places.map((place, n) => ({
        unit: n === 0 ? 'compass' : 'gnss',
        is: 'heading',
        place,
        aboveWaterM: 0.5,
        heading: { ...soundHeading, ...own },
      })),
    },
  });
const near = (own: Partial<HeadingNear>): HeadingNear => ({
  id: 'radio',
  is: 'engine',
  distanceM: 1.2,
  leastM: 2,
  by: 'kind',
  verdict: 'not',
  ...own,
});
const slide =
  'Move the one or the other. Before a hole is drilled slide the sensor 30 cm each way with everything switched on: 5° of change or less is good, over 10° is another place.';

test('a feed that turns a heading sensor is a fault from high current on or as a single wire', () => {
  const by = (own: Partial<CompassFeed>) => heading('wire-turns-heading-sensor', { feeds: [feedTooNear(own)] });
  expect(by({})).toEqual([
    'doubt compass display: The feed of Helm display passes Heading sensor at the mast at 0.50 m: 2.0 A turn it by up to 1.5°, where 1.2° is allowed for a compass. [1.5 ° / 1.2] Twist the two wires where they pass it, or keep them 0.60 m off. Then switch it on and watch the heading.',
  ]);
  expect(by({ laid: 'single' })).toEqual([
    'fault compass display: The feed of Helm display passes Heading sensor at the mast at 0.50 m as a single wire: 2.0 A turn it by up to 1.5°, where 1.2° is allowed for a compass. [1.5 ° / 1.2] Lead plus and minus side by side, twisted where they pass it, or keep them 0.60 m off. Then switch it on and watch the heading.',
  ]);
  const level = (currentA: number) => by({ currentA })[0]?.split(' ')[0];
  expect([level(19.9), level(20)]).toEqual(['doubt', 'fault']);
});

test('what is too near a heading sensor is told by name, with whose distance it is', () => {
  const tooNear = (own: Partial<HeadingNear>) => heading('heading-sensor-too-near', { near: [near(own)] });
  const [engine = ''] = tooNear({});
  expect(engine).toContain(
    'fault compass radio: Heading sensor at the mast stands 1.20 m from Old radio; 2.00 m from an engine is asked for. [1.2 m / 2]',
  );
  expect(tooNear({ is: 'unit', by: 'sheet' })).toEqual([
    `doubt compass radio: Heading sensor at the mast stands 1.20 m from Old radio; its distance from a compass is 2.00 m. [1.2 m / 2] ${slide}`,
  ]);
  expect(tooNear({ by: 'taken' })).toEqual([
    `doubt compass radio: Heading sensor at the mast stands 1.20 m from Old radio; nobody knows its distance from a compass, and 2.00 m is taken. [1.2 m / 2] ${slide}`,
  ]);
  expect(tooNear({ is: 'radio' })[0]).toMatch(/^doubt .*; 2.00 m from a radio or sounder is asked for/);
  expect(tooNear({ distanceM: 2 })).toEqual([]);
  expect(tooNear({ is: 'steel' })).toEqual([]);
});

test.each<[HeadingNear['is'], string]>([
  ['engine', 'an engine'],
  ['radar', 'a radar'],
  ['motor', 'a motor or pump'],
  ['radio-antenna', 'a VHF or HF antenna'],
  ['high-current', 'a wire of high current'],
  ['loudspeaker', 'a loudspeaker'],
  ['compass', 'a steering compass'],
])('a neighbour of kind %s is called so', (is, words) => {
  expect(heading('heading-sensor-too-near', { near: [near({ is })] })[0]).toContain(`; 2.00 m from ${words} is asked`);
});

test.each([
  ['house', 'the battery house'],
  ['feed:nav~main-panel', 'the feed of Navigation bus'],
  ['feed:display.supply~main-panel', 'the feed of Helm display'],
  ['feed:tiller~main-panel', 'the feed of tiller'],
  ['stern-rail', 'stern rail'],
  ['lead-keel', 'lead-keel'],
])('what is near and has the id %s is called by its name', (id, words) => {
  expect(heading('heading-sensor-too-near', { near: [near({ id })] })[0]).toContain(`stands 1.20 m from ${words};`);
});

test('a feed told by its current is not told by its distance too', () => {
  const beside = { near: [near({ id: 'feed:display.supply~main-panel', is: 'high-current' })] };
  expect(heading('heading-sensor-too-near', { ...beside, feeds: [feedTooNear({ tooNear: false })] })).toHaveLength(1);
  expect(heading('heading-sensor-too-near', { ...beside, feeds: [feedTooNear({})] })).toEqual([]);
});

test('two sensors at one place too near to one thing are one finding, at two places two', () => {
  const both = (...places: string[]) =>
    heading('heading-sensor-too-near', { near: [near({ by: 'taken' })] }, undefined, places);
  expect(both('locker', 'locker')).toEqual([
    `doubt compass gnss radio: Heading sensor at the mast and GNSS on the stern rail stand 1.20 m from Old radio; nobody knows its distance from a compass, and 2.00 m is taken. [1.2 m / 2] ${slide}`,
  ]);
  expect(both('locker', 'helm')).toHaveLength(2);
});

test('for a fault a better place is named of which nothing is known, and it is not the place where it stands', () => {
  const said = (place: string, own: Partial<HeadingNear> = {}): string | undefined =>
    heading('heading-sensor-too-near', { near: [near(own)] }, aBoat().unit('compass', { place }).boat)[0]
      ?.split('another place.')
      .at(-1);
  expect([said('mast-base'), said('locker'), said('locker', { by: 'taken' })]).toEqual([
    '',
    ' Nothing known speaks against mast base.',
    '',
  ]);
});

test('plating is told by what was measured, what an adjuster said and what is only drawn', () => {
  const plating = (own: Partial<HeadingNear>, site = {}) =>
    heading(
      'heading-sensor-in-steel',
      { near: [near({}), near({ id: 'hull', is: 'steel', distanceM: 0.4, leastM: 1, ...own })] },
      aBoat().unit('compass', { site }).boat,
    );
  const raise =
    'Raise it off the plating, above the deck or into a house that is not of steel, at least 1 m off; where iron stays near have it adjusted. A satellite compass or a gyro needs none of this.';
  expect(plating({})).toEqual([
    `fault compass: Heading sensor at the mast stands 0.40 m from plating of steel. [0.4 m / 1] ${raise}`,
  ]);
  expect(plating({ by: 'taken' })).toEqual([
    `doubt compass: Heading sensor at the mast stands in a hull of steel, as the drawing has it 0.40 m from the plating; nobody has measured it. [0.4 m / 1] Measure how far it is from the nearest plating and enter it. ${raise}`,
  ]);
  const level = (verdict: HeadingNear['verdict'], adjuster?: boolean) =>
    plating({ verdict }, adjuster === undefined ? {} : { adjuster })[0]?.split(' ')[0];
  expect([level('not'), level('doubtful'), level('good')]).toEqual(['fault', 'doubt', undefined]);
  expect([level('not', true), level('doubtful', true)]).toEqual(['doubt', undefined]);
  expect([level('not', false), level('doubtful', false)]).toEqual(['fault', 'doubt']);
});
