import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { fittingLimits } from '../../facts/fitting-limits.ts';
import { plateScrews } from '../../facts/opening-figures.ts';
import type { MmShape } from '../../fits-shape.ts';
import { bestPlace, type SetOver } from './best-place.ts';
import { boxRiseK } from './box-heat.ts';
import { edgeDistanceMm } from './edge-distance.ts';
import { grownShape } from './grown-shape.ts';
import { holeCase } from './hole-case.ts';
import { ipEnough } from './ip-enough.ts';
import { leastWebMm } from './least-web.ts';
import { letterFloorMm, letterHeightMm } from './letter-height.ts';
import { pathArea } from './path-area.ts';
import { plateBounds } from './plate-bounds.ts';
import { plateScrewsAt } from './plate-screws-at.ts';
import { screwNeedMm } from './screw-needs.ts';
import { shapeAreaMm2 } from './shape-area.ts';
import { shapeAt } from './shape-at.ts';
import { shapePoints } from './shape-points.ts';
import { sticksOutMm } from './sticks-out.ts';
import { uncoveredOf } from './uncovered.ts';

const rectangle = (widthMm: number, heightMm: number, [xMm, yMm] = [0, 0]): MmShape => ({
  shape: 'rectangle',
  xMm,
  yMm,
  widthMm,
  heightMm,
});
const round = (diameterMm: number): MmShape => ({ ...rectangle(diameterMm, diameterMm), shape: 'round' });
const unit = { bezel: rectangle(250, 160), cut: rectangle(225, 140), landMm: 8 };

describe('the published check values of screens and panels', () => {
  it('letters under 20 arcmin are 5.82 mm at 1 m, 4.07 mm at 0.7 m (DP-01, DP-02, IHO S-52 App. 2, second-hand)', () => {
    expect(Math.abs(letterHeightMm(1) - 5.8178)).toBeLessThan(0.05);
    expect(Math.abs(letterHeightMm(0.7) - 4.0725)).toBeLessThan(0.05);
  });

  it('3.5 mm a metre is 5.25 mm at 1.5 m (DP-03, from memory)', () => {
    expect(letterFloorMm(1.5)).toBeCloseTo(5.25, 6);
  });

  it('IP67, IP66 and IPX7 are no IPX6/IPX7 (DP-06, IEC 60529, second-hand)', () => {
    const has = (code: string): boolean => ipEnough(code, ['IPX6', 'IPX7']);
    expect(['IP67', 'IPX6/IPX7', 'IP66', 'IPX7'].map(has)).toEqual([false, true, false, false]);
  });

  it('IP66 is enough for X5 and 54 (DP-07, IEC 60529, second-hand)', () => {
    expect(ipEnough('IP66', ['IPX5', 'IP54'])).toBe(true);
    expect(ipEnough('IPX6', ['IP54'])).toBe(false);
    expect(ipEnough('IPX8', ['IPX7'])).toBe(true);
    expect(ipEnough('IPX9', ['IPX6'])).toBe(false);
  });

  it('30 W in a box of 0.8 m² make it 6.25 K warmer (DP-08, from memory)', () => {
    expect(boxRiseK({ powerW: 30, areaM2: 0.8 })).toBeCloseTo(6.25, 2);
  });

  it.each([
    ['DP-09', rectangle(200, 120), 'inside-cutout'],
    ['DP-10', rectangle(230, 130), 'under-bezel'],
    ['DP-11', rectangle(240, 150), 'shows'],
    ['DP-12', rectangle(215, 120, [12, 0]), 'shows'],
  ] as const)('%s: an old hole under a concentric bezel (geometry)', (_, hole, which) => {
    expect(holeCase({ hole, ...unit })).toBe(which);
  });

  it('a 4 mm screw may lie 10 mm from an edge, not 9 (DP-13, workshop practice)', () => {
    const need = screwNeedMm(4, fittingLimits['screw-to-edge'].value);
    expect([9, 10, 12].map((edgeMm) => edgeMm >= need)).toEqual([false, true, true]);
  });

  it('webs of 6 and 12 mm panels are 25 and 36 mm (DP-14, workshop practice)', () => {
    const figures = { leastMm: fittingLimits['web-least'].value, thicknesses: fittingLimits['web-thicknesses'].value };
    expect([6, 12].map((thicknessMm) => leastWebMm({ thicknessMm, ...figures }))).toEqual([25, 36]);
  });

  it('a plate over 200 x 120 mm with 20 mm of overlap is 240 x 160 mm (DP-15, workshop practice)', () => {
    const plate = plateBounds({ holes: [rectangle(200, 120)], overlapMm: 20, bezels: [], roundBezelMm: 16 });
    expect([plate.widthMm, plate.heightMm]).toEqual([240, 160]);
  });
});

const bare: SetOver = { hole: rectangle(200, 120), ...unit, screws: [], edgesMm: {}, edgeLeastMm: 30, inTheWay: [] };

test('a hole beside the middle that shows under a concentric bezel is covered where the unit is set off', () => {
  // the hole of DP-12 from its own middle: the unit set 12 mm to the left of it would show it
  const hole = rectangle(215, 120);
  expect(bestPlace({ ...bare, hole })).toMatchObject({ setOff: [0, 0], kind: 'enlarge', case: 'inside-cutout' });
  const right = bestPlace({ ...bare, hole, edgesMm: { right: 33 } });
  expect(right.setOff).toEqual([-2, 0]);
});

test('a unit that passes its hole and hides it comes in as it is', () => {
  const small = { ...bare, hole: round(92), cut: round(92), bezel: rectangle(112, 115) };
  expect(bestPlace(small)).toMatchObject({ setOff: [0, 0], kind: 'as-it-is' });
  expect(bestPlace({ ...small, hole: round(110) }).kind).toBe('plate');
  expect(bestPlace({ ...small, onPlate: true }).kind).toBe('plate');
});

test('a screw that lands in the old hole, or too near its edge, takes a plate', () => {
  const wide = { ...bare, hole: rectangle(232, 100) };
  expect(bestPlace(wide).kind).toBe('enlarge');
  const screwed = { ...wide, screws: [-119, 119].map((x) => ({ at: [x, 0] as const, needMm: 10 })) };
  expect(bestPlace(screwed).kind).toBe('plate');
});

test('what stands behind is kept clear of, or there is no room', () => {
  const rib = (x: number) => rectangle(20, 200, [x, 0]);
  const beside = bestPlace({ ...bare, inTheWay: [rib(118)] });
  expect(beside).toMatchObject({ setOff: [-5, 0], kind: 'enlarge' });
  expect(bestPlace({ ...bare, inTheWay: [rib(100), rib(-100)] }).case).toBe('no-room');
});

const size = fc.integer({ min: 40, max: 300 });
test('no other place on the grid needs less than the best, whatever the sizes', () => {
  fc.assert(
    fc.property(size, size, fc.integer({ min: 4, max: 30 }), fc.integer({ min: -20, max: 20 }), (w, h, rim, more) => {
      const over = {
        ...bare,
        hole: rectangle(Math.max(20, w + more), Math.max(20, h + more)),
        cut: rectangle(w, h),
        bezel: rectangle(w + 2 * rim, h + 2 * rim),
      };
      const { setOff, case: which } = bestPlace(over);
      const at = { hole: over.hole, cut: shapeAt(over.cut, setOff), bezel: shapeAt(over.bezel, setOff), landMm: 8 };
      expect(holeCase(at)).toBe(which);
      // where nothing is in the way, the middle is as good as any
      if (which === 'shows') expect(holeCase({ ...at, cut: over.cut, bezel: over.bezel })).toBe('shows');
      expect(setOff).toEqual([0, 0]);
    }),
    { numRuns: 30 },
  );
});

test('slivers are as wide as the hole reaches out, and as large as what the bezel does not cover', () => {
  const cover = grownShape(rectangle(290, 180), -8);
  expect(uncoveredOf(rectangle(300, 200), cover)).toMatchObject({
    sides: [
      { side: 'left', mm: 13 },
      { side: 'right', mm: 13 },
      { side: 'above', mm: 18 },
      { side: 'below', mm: 18 },
    ],
    areaMm2: 300 * 200 - 274 * 164,
  });
  expect(uncoveredOf(rectangle(274, 164), cover)).toBeUndefined();
  const round110 = uncoveredOf(round(110), grownShape(rectangle(112, 115), -8));
  expect(round110?.widestMm).toBeCloseTo(7, 6);
});

const shapes = fc.oneof(
  fc.tuple(size, size).map(([w, h]) => rectangle(w, h)),
  fc.tuple(size, size, fc.integer({ min: 1, max: 20 })).map(([w, h, cornerMm]) => ({ ...rectangle(w, h), cornerMm })),
  size.map(round),
);
test('the points of a shape lie on its edge and hold nearly its area; grown, it is as much further out', () => {
  fc.assert(
    fc.property(shapes, (shape) => {
      const points = shapePoints(shape);
      expect(Math.max(...points.map((point) => Math.abs(edgeDistanceMm(shape, point))))).toBeLessThan(1e-9);
      expect(Math.abs(pathArea(points) / shapeAreaMm2(shape) - 1)).toBeLessThan(1e-3);
      expect(sticksOutMm(shapePoints(grownShape(shape, 5)), shape)).toBeGreaterThan(5 - 1e-9);
      const traced: MmShape = {
        ...shape,
        shape: 'traced',
        outlineMm: points.map(([x, y]): [number, number] => [x, y]),
      };
      expect(edgeDistanceMm(traced, [1, 2])).toBeCloseTo(edgeDistanceMm(shape, [1, 2]), 0);
      expect(edgeDistanceMm(traced, [400, 0])).toBeGreaterThan(0);
    }),
    { numRuns: 40 },
  );
});

test('screws hold a plate in every corner, 12 mm from its edge and at most 120 mm apart', () => {
  const screws = plateScrewsAt({ widthMm: 380, heightMm: 300 });
  expect(screws).toHaveLength(12);
  expect(screws[0]).toEqual({ xMm: -178, yMm: -138, holeMm: 4 });
  const nearest = screws.map(({ xMm, yMm }, at) =>
    Math.min(...screws.filter((_, n) => n !== at).map((other) => Math.hypot(other.xMm - xMm, other.yMm - yMm))),
  );
  expect(Math.max(...nearest)).toBeLessThanOrEqual(plateScrews.apartMost.value);
});
