import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bearingOn, besideM, relativeDeg, wholeTurn } from './bearings.ts';
import { leastDistanceM, mergeSectors, opticalDeg, sectorVerdict } from './shadow-sectors.ts';

it('RD-08: a mast of 150 mm at 350 mm covers 24.7 degrees (geometry)', () => {
  expect(Math.abs(opticalDeg(0.15, 0.35) - 24.747)).toBeLessThanOrEqual(0.1);
});

it('RD-09: 100 mm cover 2 degrees at 2.86 m (IMO Res. A.807(19), second-hand)', () => {
  expect(Math.abs(leastDistanceM(0.1, 2) - 2.8649)).toBeLessThanOrEqual(0.02);
});

it('RD-10: one degree is 32.3 m at a mile (geometry)', () => {
  expect(Math.abs(besideM(1, 1) - 32.327)).toBeLessThanOrEqual(0.1);
});

it('RD-11, RD-12: a bearing from ahead is the bearing less the heading, round the compass', () => {
  expect([relativeDeg(65, 21), relativeDeg(30, 42)]).toEqual([44, 348]);
  expect(bearingOn({ xM: 0, yM: 0 }, { xM: -1, yM: 0 })).toBe(180);
  expect(bearingOn({ xM: 0, yM: 0 }, { xM: 0, yM: 2 })).toBe(90);
});

it('RD-14: two arcs two degrees apart are one of ten degrees, which is too wide (IMO SN.1/Circ.271, second-hand)', () => {
  const found = sectorVerdict([
    { fromDeg: 150, toDeg: 154 },
    { fromDeg: 156, toDeg: 160 },
  ]);
  expect(found).toEqual({
    sectors: [{ fromDeg: 150, toDeg: 160 }],
    largestDeg: 10,
    totalDeg: 10,
    isAhead: false,
    guidelineMet: false,
  });
});

it('RD-15: an arc of four degrees at 20 is forward of 22.5 degrees abaft the beam (IMO SN.1/Circ.271, second-hand)', () => {
  expect(sectorVerdict([{ fromDeg: 20, toDeg: 24 }])).toMatchObject({ isAhead: true, guidelineMet: false });
  expect(sectorVerdict([{ fromDeg: 178, toDeg: 182 }])).toMatchObject({ isAhead: false, guidelineMet: true });
  expect(sectorVerdict([{ fromDeg: 358, toDeg: 2 }])).toMatchObject({ isAhead: true, totalDeg: 4 });
});

it('an arc over the bow and one beside it are one', () => {
  expect(
    mergeSectors([
      { fromDeg: 3, toDeg: 5 },
      { fromDeg: 355, toDeg: 1 },
    ]),
  ).toEqual([{ fromDeg: 355, toDeg: 5 }]);
});

it('whatever the arcs, what is merged covers them and lies farther apart than three degrees', () => {
  const arc = fc
    .record({ fromDeg: fc.integer({ min: 0, max: 359 }), wide: fc.integer({ min: 1, max: 20 }) })
    .map(({ fromDeg, wide }) => ({ fromDeg, toDeg: wholeTurn(fromDeg + wide) }));
  fc.assert(
    fc.property(fc.array(arc, { maxLength: 6 }), (arcs) => {
      const merged = mergeSectors(arcs);
      const covers = (deg: number): boolean =>
        merged.some(({ fromDeg, toDeg }) => wholeTurn(deg - fromDeg) <= wholeTurn(toDeg - fromDeg) + 1e-9);
      for (const { fromDeg, toDeg } of arcs) expect([covers(fromDeg), covers(toDeg)]).toEqual([true, true]);
      for (const [at, { toDeg }] of merged.entries()) {
        const next = merged[(at + 1) % merged.length];
        if (merged.length > 1 && next !== undefined) expect(wholeTurn(next.fromDeg - toDeg)).toBeGreaterThan(3);
      }
    }),
  );
});
