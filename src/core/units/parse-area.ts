import { awgAreaMm2 } from './awg.ts';

const metric = /^(\d+(?:[.,]\d+)?) ?(?:mm2|mm²|mm\^2|sq ?mm)?$/;
const gauge = /^(?:awg ?#?(\d{1,2}|[1-4]\/0)|#?(\d{1,2}|[1-4]\/0) ?awg)$/;

/** The number of a gauge: 2/0 is -1, for the sizes above 0 go on below it. */
const gaugeNumber = (text: string): number => (text.endsWith('/0') ? 1 - Number(text[0]) : Number(text));

/**
 * Reads the size of a wire that a person typed, in mm² of copper; a bare number is mm². Undefined when it is none.
 *
 * @example parseArea('AWG 6') // 13.3
 */
export const parseArea = (text: string): number | undefined => {
  const plain = text.trim().toLowerCase().replace(/\s+/g, ' ');
  const inMm2 = metric.exec(plain)?.[1];
  if (inMm2 !== undefined) return within(Number(inMm2.replace(',', '.')));
  const [, before, after] = gauge.exec(plain) ?? [];
  const number = before ?? after;
  return number === undefined ? undefined : within(Number(awgAreaMm2(gaugeNumber(number)).toPrecision(3)));
};

const within = (areaMm2: number): number | undefined => (areaMm2 > 0 && areaMm2 <= 1000 ? areaMm2 : undefined);
