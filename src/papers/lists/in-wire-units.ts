import { awgAreaMm2 } from '../../core/units/awg.ts';
import type { LengthUnits } from './in-units.ts';

/** Gauges that wires are sold by, as they are written, with the number their area is worked out from. */
const gauges: readonly (readonly [gauge: string, awg: number])[] = [
  ['4/0', -3],
  ['3/0', -2],
  ['2/0', -1],
  ['1/0', 0],
  ...Array.from({ length: 26 }, (_, at): [string, number] => [String(at + 1), at + 1]),
];

const areaOf = new Map(gauges.map(([gauge, awg]) => [gauge, Number(awgAreaMm2(awg).toFixed(2))]));
const gaugeOf = new Map([...areaOf].map(([gauge, areaMm2]) => [areaMm2, gauge]));

const gauge = String.raw`([1-4]\/0|\d{1,2})[ \u00A0]AWG`;
const area = String.raw`(\d+(?:\.\d+)?)[ \u00A0]mm²`;
/** An area with the gauge that does the same behind it; an area alone; a gauge alone. */
const wires = new RegExp(String.raw`${area}(?: \(${gauge}\)| or ${gauge})|${area}|(?<![\d/])${gauge}`, 'gu');

/**
 * A sentence with its wires in other units, like lengths: metres go with mm², feet with gauges. Where an area has a gauge
 * beside it, one of the two is said; alone, an area of a gauge and a gauge say each other. A metric size without a gauge
 * stays, because no gauge is that wire: the next ones carry more or less than what is aboard.
 *
 * @example inWireUnits('2 × 2.5 mm² or 12 AWG', 'feet') // '2 × 12 AWG'
 */
export const inWireUnits = (words: string, units: LengthUnits): string =>
  words.replace(
    wires,
    (all, both?: string, inBrackets?: string, behindOr?: string, alone?: string, gaugeAlone?: string) => {
      if (both !== undefined) {
        if (units === 'both') return all;
        return units === 'metres' ? `${both} mm²` : `${inBrackets ?? behindOr} AWG`;
      }
      if (alone !== undefined) {
        const same = gaugeOf.get(Number(alone));
        if (same === undefined || units === 'metres') return all;
        return units === 'feet' ? `${same} AWG` : `${all} (${same} AWG)`;
      }
      const areaMm2 = areaOf.get(gaugeAlone ?? '');
      if (areaMm2 === undefined || units === 'feet') return all;
      return units === 'metres' ? `${areaMm2} mm²` : `${all} (${areaMm2} mm²)`;
    },
  );
