import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { anOpening } from '../../boat/an-opening.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { Opening } from '../../boat/opening.ts';
import type { Sheet } from '../../boat/sheet.ts';
import type { FitEntry, PlateEntry } from '../../fits-shape.ts';
import { planOpenings } from './plan-openings.ts';

const opening = (own: Partial<Opening> = {}): Opening => anOpening({ for: 'display', ...own });

const face: Partial<Sheet> = {
  body: { widthMm: 250, heightMm: 160, depthMm: 80 },
  cutout: { widthMm: 225, heightMm: 140 },
  plugsMm: 70,
};

const boatWith = (openings: Opening[], sheet: Partial<Sheet> = face): Boat =>
  aBoat()
    .with({ openings })
    .unit('display', { fate: 'comes' })
    .sheet('small-display', (own) => Object.assign(own, sheet)).boat;

const planned = (openings: Opening[], sheet?: Partial<Sheet>): { fits: FitEntry[]; plates: PlateEntry[] } =>
  planOpenings({ index: indexBoat(boatWith(openings, sheet)), lines: [], buses: [] });

const only = (own: Partial<Opening> = {}, sheet?: Partial<Sheet>): FitEntry | undefined =>
  planned([opening(own)], sheet).fits[0];

test('a hole inside the new cut-out is enlarged; by typical sizes nothing is cut', () => {
  expect(only()).toMatchObject({ verdict: 'enlarge', case: 'inside-cutout', notForCutting: ['typical-sizes'] });
  expect(only({}, { ...face, source: 'manual' })?.notForCutting).toBeUndefined();
  expect(only({ how: 'guessed' }, { ...face, source: 'manual' })?.notForCutting).toEqual(['guessed-hole']);
});

test('sizes measured on the unit in hand are as good as its manual', () => {
  const boat = boatWith([opening()]);
  const changed = {
    ...boat,
    kit: boat.kit.map((unit) =>
      unit.id === 'display'
        ? {
            ...unit,
            changes: (['body', 'cutout'] as const).map((path) => ({ path, value: face[path], how: 'seen' as const })),
          }
        : unit,
    ),
  };
  const [fit] = planOpenings({ index: indexBoat(changed), lines: [], buses: [] }).fits;
  expect(fit?.notForCutting).toBeUndefined();
});

test('what changes in a sheet changes the answer that was kept', () => {
  expect(only()?.verdict).toBe('enlarge');
  expect(
    only({}, { ...face, body: { widthMm: 210, heightMm: 130 }, cutout: { widthMm: 190, heightMm: 110 } })?.verdict,
  ).toBe('plate');
  expect(only()?.verdict).toBe('enlarge');
});

test('less room behind than body and plugs take wants another place', () => {
  expect(only({ behind: { depthMm: 149 } })).toMatchObject({
    verdict: 'elsewhere',
    behind: { needMm: 150, freeMm: 149 },
  });
  expect(only({ behind: { depthMm: 150 } })?.verdict).toBe('enlarge');
});

test('a thick cable wants more behind than the plugs', () => {
  const boat = boatWith([opening()]);
  const line = {
    id: 'coax:display.video~radio.rf',
    kind: 'coax',
    from: 'display.video',
    to: 'radio.rf',
    places: [],
    ways: [],
    lengthM: 30,
    longestM: 30,
    guessed: false,
  } as const;
  const [fit] = planOpenings({ index: indexBoat(boat), lines: [{ ...line, places: [], ways: [] }], buses: [] }).fits;
  expect(fit?.behind?.line).toBe(line.id);
  expect(fit?.behind?.plugsMm).toBe(Math.max(70, 6 * (fit?.behind?.cableMm ?? 0)));
});

test('nothing comes: a blind plate of its own, as large as the hole with its overlap', () => {
  const { for: _, ...bare } = opening();
  const { fits, plates } = planned([bare]);
  expect(fits[0]).toMatchObject({ verdict: 'close', plate: 'plate-hole' });
  // 12 mm from its edge and 2.5 diameters from the hole, a screw asks for 22 mm
  expect(plates[0]).toMatchObject({
    overlapMm: 22,
    outline: { widthMm: 244, heightMm: 164 },
    cuts: [],
    material: 'grp',
  });
});

test('a hole in the hull takes the same housing, or none, and never a plate', () => {
  const hull = { throughHull: true, hole: { shape: 'round', widthMm: 51, heightMm: 51 } } as const;
  const round = (mm: number): Partial<Sheet> => ({ cutout: { shape: 'round', widthMm: mm, heightMm: mm } });
  expect(only(hull, round(51))?.verdict).toBe('same-hole');
  expect(only(hull, round(60))?.verdict).toBe('enlarge');
  expect(only(hull, round(40))?.verdict).toBe('elsewhere');
  const { for: _, ...bare } = opening(hull);
  expect(planned([bare])).toMatchObject({ fits: [{ verdict: 'close' }], plates: [] });
});

test('a sheet without sizes says nothing; a person’s own word goes before what is computed', () => {
  const { body: _, ...noBody } = face;
  expect(planned([opening()], noBody).fits[0]?.verdict).toBe('not-known');
  const instead = { verdict: 'close', reason: 'A chart pocket comes there.' } as const;
  expect(only({ instead })).toMatchObject({ verdict: 'close', computed: 'enlarge', reason: instead.reason });
});

test('openings with one plate share it; each unit is set in it over its own hole', () => {
  const plate = { id: 'dash', overlapMm: 25, material: 'aluminium', thicknessMm: 4 } as const;
  const { for: _, ...second } = opening({ id: 'old-gauge', hole: { shape: 'round', widthMm: 80, heightMm: 80 } });
  const { fits, plates } = planned([opening({ atMm: [0, 0], plate }), { ...second, atMm: [200, 10], plate }]);
  expect(fits.map(({ plate: id }) => id)).toEqual(['dash', 'dash']);
  const [made] = plates;
  expect(made).toMatchObject({ id: 'dash', material: 'aluminium', thicknessMm: 4, cuts: [{ unit: 'display' }] });
  // the unit does not pass its old hole: the panel is cut under the plate
  expect(made?.widens).toEqual(['hole']);
  // from the bezel and its 16 mm on the left of the first hole to 40 + 25 on the right of the second
  expect(made?.outline.widthMm).toBe(125 + 16 + 200 + 40 + 25);
  const [one, other] = made?.openings ?? [];
  expect([(other?.xMm ?? 0) - (one?.xMm ?? 0), (other?.yMm ?? 0) - (one?.yMm ?? 0)]).toEqual([200, 10]);
});

test('screws whose places are known are held against the hole; old ones are counted', () => {
  const screws = [-1, 1].map((side) => ({ xMm: side * 119, yMm: 0, holeMm: 4 }));
  const wide = {
    hole: { shape: 'rectangle', widthMm: 232, heightMm: 100 },
    screws: [{ xMm: 130, yMm: 60, holeMm: 4 }],
  } as const;
  const fit = only({ ...wide, screws: [...wide.screws] }, { ...face, cutout: { widthMm: 225, heightMm: 140, screws } });
  expect(fit).toMatchObject({ verdict: 'plate', oldScrews: { count: 1, bare: 1 } });
});
