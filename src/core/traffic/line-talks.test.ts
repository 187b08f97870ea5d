import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import type { Sends } from '../boat/sheet.ts';
import { shipSentencesPerS, shipsHeard } from '../facts/waters.ts';
import { joinsOf } from '../joins/joins-of.ts';
import { lineLoad } from '../joins/line-load.ts';
import { type PortSketch, turn, type UnitSketch, wired } from '../readings/wired.test-helper.ts';
import { inputsOfTalker, lineTalks, talkedCharsPerS } from './line-talks.ts';

const line = (port: Omit<PortSketch, 'protocol'>): PortSketch => ({ protocol: 'nmea0183', ...port });
const talker = (...sends: (string | Sends)[]): UnitSketch => ({ ports: { out: line({ sends }) } });
const ear: UnitSketch = { ports: { in: line({ hears: [] }) } };

const talksOf = (boat: Boat, from: string) => {
  const index = indexBoat(boat);
  return lineTalks(index, joinsOf(index, 1), from);
};
const charsOf = (boat: Boat, from: string): number => talkedCharsPerS(talksOf(boat, from));

const fed = (units: Record<string, UnitSketch>, mux: UnitSketch): Boat =>
  wired({
    units: { ...units, mux, ear },
    joins: {
      ...Object.fromEntries(Object.keys(units).map((id, at) => [`to-${id}`, [`${id}.out`, `mux.in-${at + 1}`]])),
      onward: ['mux.out', 'ear.in'],
    },
  });

const inputs = ['in-1', 'in-2', 'in-3', 'in-4'];
/** A multiplexer that passes on heading and depth. */
const muxSending = (...sends: (string | Sends)[]): UnitSketch => ({
  ports: {
    ...Object.fromEntries(inputs.map((id) => [id, line({ hears: ['HDG', 'DPT', 'MWV'] })])),
    out: line(sends.length === 0 ? { role: 'talk' } : { sends }),
  },
  turns: inputs.map((id) => turn(id, 'out', 'heading', 'depth')),
});

describe('a talker', () => {
  it('sends its own sentences at the rate of its sheet, else the usual one; MS-78 by its own lengths (computed)', () => {
    const boat = wired({
      units: { sensor: talker({ sentence: 'HDG', everyMs: 100 }, 'MWV', 'VHW', 'DPT', 'RMC'), ear },
      joins: { pair: ['sensor.out', 'ear.in'] },
    });
    expect(talksOf(boat, 'sensor.out').map(({ sentence, everyMs }) => [sentence, everyMs])).toEqual([
      ['HDG', 100],
      ['MWV', 1000],
      ['VHW', 1000],
      ['DPT', 1000],
      ['RMC', 1000],
    ]);
    // 398, and 401 with an RMC of 71 characters: 83.54 % of 480
    const charsPerS = charsOf(boat, 'sensor.out') + 3;
    expect(lineLoad({ charsPerS, baud: 4800 }).sharePct).toBeCloseTo(83.54, 2);
  });

  it('brings as many reports of other ships as there are in the waters: on a coast one a second, as recorded (MS-107)', () => {
    const boat = wired({ units: { ais: talker('VDM', 'VDO'), ear }, joins: { pair: ['ais.out', 'ear.in'] } });
    expect(talksOf({ ...boat, waters: 'coast' }, 'ais.out')).toMatchObject([{ sentence: 'VDM', rate: 'waters' }]);
    // 183 sentences in 163 s were recorded, six of them of base stations and the like
    expect(Math.abs(shipSentencesPerS(shipsHeard.coast) / (183 / 163) - 1)).toBeLessThan(0.05);
    expect(lineLoad({ charsPerS: charsOf(boat, 'ais.out'), baud: 38_400 }).sharePct).toBeLessThan(20);
    expect(lineLoad({ charsPerS: charsOf(boat, 'ais.out'), baud: 4800 }).sharePct).toBeGreaterThan(80);
  });
});

describe('a multiplexer', () => {
  const half = talker({ sentence: 'HDG', everyMs: 104 });

  it('gives its output the sum of its inputs: four at half load are 200 % of 4800 baud (BB-49, computed)', () => {
    const boat = fed({ one: half, two: half, three: half, four: half }, muxSending());
    const charsPerS = charsOf(boat, 'mux.out');
    expect(charsPerS).toBeCloseTo(4 * (25_000 / 104), 6);
    expect(lineLoad({ charsPerS, baud: 4800 }).sharePct).toBeCloseTo(200, 0);
    expect(inputsOfTalker(indexBoat(boat), 'mux.out')).toBe(4);
    expect(talksOf(boat, 'mux.out')).toMatchObject(
      ['one', 'two', 'three', 'four'].map((id) => ({ from: `${id}.out` })),
    );
  });

  it('passes on what its output lists and its turns carry, a sentence unknown here where nothing is listed', () => {
    const sensor = talker('HDG', 'DPT', 'MWV', { sentence: 'ZZZ', everyMs: 1000 });
    const passed = (mux: UnitSketch) => talksOf(fed({ sensor }, mux), 'mux.out').map(({ sentence }) => sentence);
    expect(passed(muxSending())).toEqual(['HDG', 'DPT', 'ZZZ']);
    expect(passed(muxSending('DPT'))).toEqual(['DPT']);
  });

  it('sends nothing of what it lists where nothing comes in, and its own sentences all the same', () => {
    const mux = muxSending('HDG', 'RMC');
    expect(talksOf(fed({}, mux), 'mux.out')).toMatchObject([{ sentence: 'RMC', from: 'mux.out' }]);
  });

  it('that feeds another passes all of it on, and a ring of them comes to an end', () => {
    const twice = wired({
      units: { sensor: half, first: muxSending(), second: muxSending(), ear },
      joins: {
        a: ['sensor.out', 'first.in-1'],
        b: ['first.out', 'second.in-1'],
        c: ['second.out', 'ear.in'],
        d: ['second.out', 'first.in-2'],
      },
    });
    expect(talksOf(twice, 'second.out')).toMatchObject([{ sentence: 'HDG', from: 'sensor.out', rate: 'passed' }]);
  });

  it('never sends less when an input brings more', () => {
    const sentence = fc.constantFrom('HDG', 'DPT', 'MWV', 'GGA');
    const sends = fc.uniqueArray(sentence, { minLength: 1 });
    fc.assert(
      fc.property(fc.array(sends, { minLength: 1, maxLength: 3 }), sends, (list, more) => {
        const boatOf = (all: string[][]): Boat =>
          fed(Object.fromEntries(all.map((one, at) => [`unit-${at}`, talker(...one)])), muxSending());
        expect(charsOf(boatOf([...list, more]), 'mux.out')).toBeGreaterThanOrEqual(charsOf(boatOf(list), 'mux.out'));
      }),
      { numRuns: 30 },
    );
  });
});
