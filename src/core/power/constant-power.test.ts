import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveDc } from '../network/dc-solve.ts';
import { constantPower } from './constant-power.ts';

const source = 'I = (V - √(V² - 4 P R)) / (2 R), computed';

describe('a unit that holds its power', () => {
  it.each([
    ['PW-27', source, 37, 11, 0.25, 3.67, 10.083],
    ['PW-29', source, 160, 22, 0.35, 8.394, 19.062],
  ])(
    '%s (%s): %i W from %i V through %f ohm draw %f A at %f V',
    (_id, _source, powerW, sourceV, loopOhm, amps, volts) => {
      const point = constantPower({ powerW, sourceV, loopOhm });
      if (!point.works) throw new Error(point.why);
      expect(Math.abs(point.currentA - amps)).toBeLessThan(0.005);
      expect(Math.abs(point.loadV - volts)).toBeLessThan(0.005);
    },
  );

  it(`PW-28 (${source}): 88 W have no operating point behind 0.5 ohm at 12 V`, () => {
    expect(constantPower({ powerW: 88, sourceV: 12, loopOhm: 0.5 })).toEqual({
      works: false,
      why: 'no operating point',
    });
  });

  it('works at the very edge, at half the volts, and right at the source', () => {
    expect(constantPower({ powerW: 36, sourceV: 12, loopOhm: 1 })).toEqual({ works: true, currentA: 6, loadV: 6 });
    expect(constantPower({ powerW: 36, sourceV: 12, loopOhm: 0 })).toEqual({ works: true, currentA: 3, loadV: 12 });
    expect(constantPower({ powerW: 1, sourceV: 0, loopOhm: 1 }).works).toBe(false);
  });

  it('agrees with the solver of whole nets, and draws more behind more resistance', () => {
    const asked = fc.record({
      powerW: fc.double({ min: 0.1, max: 200, noNaN: true }),
      sourceV: fc.double({ min: 9, max: 30, noNaN: true }),
      loopOhm: fc.double({ min: 0.001, max: 2, noNaN: true }),
    });
    fc.assert(
      fc.property(asked, fc.double({ min: 0, max: 0.5, noNaN: true }), (one, moreOhm) => {
        fc.pre(Math.abs(one.sourceV ** 2 - 4 * one.powerW * one.loopOhm) > 1e-6);
        const point = constantPower(one);
        const net = solveDc({
          source: 's',
          sourceV: one.sourceV,
          edges: [{ id: 'e', from: 's', to: 'd', loopOhm: one.loopOhm }],
          loads: [{ node: 'd', behaves: 'power', watts: one.powerW }],
        });
        expect(point.works).toBe(net.solved);
        if (!point.works || !net.solved) return;
        expect(point.loadV).toBeCloseTo(net.voltsAt.get('d') ?? Number.NaN, 4);
        expect(point.currentA * point.loadV).toBeCloseTo(one.powerW, 6);
        const farther = constantPower({ ...one, loopOhm: one.loopOhm + moreOhm });
        if (farther.works) expect(farther.currentA).toBeGreaterThanOrEqual(point.currentA);
      }),
    );
  });
});
