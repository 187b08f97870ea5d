import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type LaneItem, type LaneShape, leastLaneMm, setLane } from './lane-columns.ts';
import { laneRadiusMm } from './lane-rows.ts';

const shape: LaneShape = { pitchMm: 3.8, sides: 'both' };

/** An outline of so many rows: the rows themselves do not matter where columns are set. */
const anItem = ({
  rows,
  widthMm,
  wishMm,
  tie,
}: {
  rows: number;
  widthMm: number;
  wishMm: number;
  tie: boolean;
}): LaneItem =>
  rows === 0
    ? { wishMm }
    : { wishMm, tie, outline: { rows: Array.from({ length: rows }, (_, row) => ({ row }) as never), widthMm } };

const items = fc.array(
  fc
    .record({
      rows: fc.integer({ min: 0, max: 6 }),
      widthMm: fc.double({ min: 8, max: 60, noNaN: true }),
      wishMm: fc.double({ min: 0, max: 400, noNaN: true }),
      tie: fc.boolean(),
    })
    .map(anItem),
  { minLength: 1, maxLength: 40 },
);

interface Strip {
  readonly sign: number;
  readonly row: number;
  readonly fromMm: number;
  readonly toMm: number;
}

/** Each row of an outline as the strip of paper it takes, and its stem as a strip through all rows before it. */
const stripsOf = (list: readonly LaneItem[], toMm: number): Strip[][] => {
  const spots = setLane(list, { fromMm: 0, toMm }, shape);
  return list.flatMap((item, at): Strip[][] => {
    const [spot, outline] = [spots[at], item.outline];
    if (spot === undefined || outline === undefined) return [];
    const { xMm, sign, rowsBefore } = spot;
    const own = outline.rows.map((_, row) => ({
      sign,
      row: rowsBefore + row,
      fromMm: xMm - laneRadiusMm,
      toMm: xMm + outline.widthMm,
    }));
    const stem = Array.from({ length: rowsBefore }, (_, row) => ({ sign, row, fromMm: xMm - 0.3, toMm: xMm + 0.3 }));
    return [[...own, ...stem]];
  });
};

test('whatever stands on a lane, no row of one unit touches a row or the stem of another, and all have room', () => {
  fc.assert(
    fc.property(items, (list) => {
      const leastMm = leastLaneMm(list, shape);
      const strips = stripsOf(list, leastMm);
      for (const [at, own] of strips.entries()) {
        for (const one of own) expect(one.toMm).toBeLessThanOrEqual(leastMm + 0.01);
        const others = strips.slice(at + 1).flat();
        const touching = own.flatMap((one) =>
          others.filter(
            (other) =>
              one.sign === other.sign &&
              one.row === other.row &&
              one.fromMm < other.toMm - 0.01 &&
              other.fromMm < one.toMm - 0.01,
          ),
        );
        expect(touching).toEqual([]);
      }
    }),
  );
});

test('stems stand in the order of the lane, clear of each other', () => {
  fc.assert(
    fc.property(items, (list) => {
      const xs = setLane(list, { fromMm: 0, toMm: 500 }, shape).map(({ xMm }) => xMm);
      for (const [at, xMm] of xs.entries()) {
        if (at > 0) expect(xMm - (xs[at - 1] ?? 0)).toBeGreaterThanOrEqual(shape.pitchMm - 0.001);
      }
    }),
  );
});

test('a unit from which a line leads on down hangs below, with nothing under it', () => {
  fc.assert(
    fc.property(items, (list) => {
      const spots = setLane(list, { fromMm: 0, toMm: 500 }, shape);
      for (const [at, { tie, outline }] of list.entries()) {
        if (tie === true && outline !== undefined) expect(spots[at]).toMatchObject({ sign: 1, rowsBefore: 0 });
      }
    }),
  );
});
