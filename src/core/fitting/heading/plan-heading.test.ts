import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat, Place } from '../../boat/boat-schema.ts';
import type { HeadingSite } from '../../heading-shape.ts';
import { headingAt } from './heading-at.ts';
import { headingField } from './heading-field.ts';
import { headingPlaces } from './heading-places.ts';
import { planHeading } from './plan-heading.ts';

const spot = (id: string, [xM, yM, zM]: readonly [number, number, number], own: Partial<Place> = {}): Place => ({
  id,
  name: id,
  xM,
  yM,
  zM,
  exposure: 'dry',
  reach: 'open',
  tees: false,
  ...own,
});

/** The Tern with a heading sensor far ahead of her, and one unit of a kind so far behind it. */
const withNeighbour = (kind: string, awayM: number, own: Partial<Boat['sheets'][number]> = {}) =>
  aBoat().add({
    places: [spot('ahead', [30, 0, 0]), spot('behind-it', [30 - awayM, 0, 0])],
    sheets: [
      {
        id: 'flux',
        name: 'Flux',
        kind: 'heading-sensor',
        source: 'typical',
        plugs: [],
        ports: [],
        sensor: { north: 'fluxgate' },
      },
      { id: 'other', name: 'Other', kind, source: 'typical', plugs: [], ports: [], ...own },
    ],
    kit: [
      { id: 'flux-1', name: 'flux', sheet: 'flux', fate: 'comes', place: 'ahead' },
      { id: 'other-1', name: 'other', sheet: 'other', fate: 'stays', place: 'behind-it' },
    ],
  });

const siteIn = (boat: Boat, unit = 'flux-1'): HeadingSite | undefined =>
  planHeading({ index: indexBoat(boat), lines: [], feeds: [] }, [unit]).get(unit);

describe('a heading sensor', () => {
  it.each([
    ['engine', 2],
    ['windlass', 1],
    ['loudspeaker', 1],
    ['steering-compass', 0.76],
    ['vhf-radio', 0.9],
    ['inverter', 1],
    ['radar', 1.5],
  ])('keeps from a %s %f m (pilot installation books), and a quarter more leaves a doubt', (kind, leastM) => {
    const verdicts = [0.95, 1.1, 1.3].map((times) => siteIn(withNeighbour(kind, leastM * times).boat)?.verdict);
    expect(verdicts).toEqual(['not', 'doubtful', 'good']);
    expect(siteIn(withNeighbour(kind, leastM * 0.95).boat)?.near).toMatchObject([
      { id: 'other-1', leastM, by: 'kind' },
    ]);
  });

  it('keeps 3 m from a VHF or HF antenna, which only disturbs while it sends', () => {
    expect([2.9, 3.1].map((m) => siteIn(withNeighbour('radio-antenna', m).boat)?.verdict)).toEqual([
      'doubtful',
      'good',
    ]);
  });

  it('keeps from other units what their sheets say of a compass, and a metre from one that says nothing', () => {
    const sheet = { compassSafe: { valueM: 0.6, how: 'papers' as const } };
    expect(siteIn(withNeighbour('display', 0.5, sheet).boat)?.near).toMatchObject([
      { leastM: 0.6, by: 'sheet', verdict: 'not' },
    ]);
    const power = {
      ports: [],
      power: [{ port: 'dc', typical: 1, max: 1, unit: 'A' as const, behaves: 'current' as const, minV: 10, maxV: 16 }],
    };
    expect(siteIn(withNeighbour('kettle', 0.8, power).boat)?.near).toMatchObject([
      { leastM: 1, by: 'taken', verdict: 'doubtful' },
    ]);
  });

  it('that finds north by satellites or a gyro is turned by nothing', () => {
    const boat = withNeighbour('engine', 0.2).sheet('flux', (sheet) => {
      sheet.sensor = { north: 'gyro' };
    }).boat;
    expect(siteIn(boat)).toMatchObject({ north: 'gyro', magnetic: false, verdict: 'good', near: [] });
  });

  it('in a hull of steel is held against the plating, by the drawing until somebody has measured', () => {
    const { boat } = withNeighbour('lamp', 9);
    const steel: Boat = {
      ...boat,
      hull: { ...boat.hull, material: 'steel' },
      places: boat.places.map((place) =>
        place.id === 'ahead' ? { ...place, xM: boat.hull.lengthM / 2, zM: 0.1 } : place,
      ),
    };
    expect(siteIn(steel)?.near).toMatchObject([{ is: 'steel', by: 'taken' }]);
    expect(siteIn(steel)?.verdict).not.toBe('good');
    const raised = {
      ...steel,
      kit: steel.kit.map((unit) => (unit.id === 'flux-1' ? { ...unit, site: { offSteelM: 1.5 } } : unit)),
    };
    expect(siteIn(raised)?.near.filter(({ is, verdict }) => is === 'steel' && verdict !== 'good')).toEqual([]);
  });
});

describe('places for a heading sensor', () => {
  it('come best first: nothing against them, then nearest to where she moves least; aloft and the engine space never', () => {
    const { boat } = aBoat().add({
      places: [spot('top', [5, 0, 12], { reach: 'aloft' }), spot('box', [4, 0, 0], { exposure: 'engine' })],
    });
    const found = headingPlaces({ index: indexBoat(boat), lines: [], feeds: [] });
    expect(new Set(found.map(({ place }) => place))).toEqual(new Set(boat.places.map(({ id }) => id)));
    const order = found.map(({ verdict }) => ['good', 'doubtful', 'not'].indexOf(verdict));
    expect(order).toEqual([...order].sort((one, other) => one - other));
    expect(found.find(({ place }) => place === 'top')).toMatchObject({ verdict: 'not', is: 'aloft' });
    expect(found.find(({ place }) => place === 'box')?.verdict).toBe('not');
  });

  it('farther from everything is never worse', () => {
    const field = headingField({ index: indexBoat(withNeighbour('engine', 1).boat), lines: [], feeds: [] });
    const rank = { not: 0, doubtful: 1, good: 2 };
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 0, max: 200 }), (dm, moreDm) => {
        const at = (awayDm: number) => headingAt(field, { xM: 40 + awayDm / 10, yM: 0, zM: 0 }).verdict;
        expect(rank[at(dm + moreDm)]).toBeGreaterThanOrEqual(rank[at(dm)]);
      }),
    );
  });
});
