import { inchesInFoot, inchM } from './foot.ts';

const number = String.raw`(\d+(?:[.,]\d+)?|\d+ \d+\/\d+|\d+\/\d+)`;
const metric = new RegExp(`^${number} ?(m|metres?|meters?|cm|mm)?$`);
const feet = new RegExp(`^${number} ?(?:ft|feet|foot|')(?: ?${number} ?(?:in|inch|inches|"|'')?)?$`);
const inches = new RegExp(`^${number} ?(?:in|inch|inches|"|'')$`);

const metresIn = (unit: string | undefined): number => {
  if (unit === 'mm') return 0.001;
  if (unit === 'cm') return 0.01;
  return 1;
};

/**
 * Reads a length a person typed, in metres; a bare number is metres. Undefined when it is no length, or one that can
 * be read two ways: "1,250" (one and a quarter, or a thousand), 14 inches after feet, part of a foot before inches.
 *
 * @example parseLength('12 ft 6') // 3.81
 */
export const parseLength = (text: string): number | undefined => {
  const plain = text.trim().toLowerCase().replace(/[′’]/g, "'").replace(/[″”]/g, '"').replace(/\s+/g, ' ');
  const inMetric = metric.exec(plain);
  if (inMetric !== null) return scaled(numberIn(inMetric[1]), metresIn(inMetric[2]));
  const inInches = inches.exec(plain);
  if (inInches !== null) return scaled(numberIn(inInches[1]), inchM);
  const inFeet = feet.exec(plain);
  return inFeet === null ? undefined : feetAndInches(numberIn(inFeet[1]), inFeet[2]);
};

const feetAndInches = (wholeFeet: number | undefined, inchText: string | undefined): number | undefined => {
  if (inchText === undefined) return scaled(wholeFeet, inchesInFoot * inchM);
  const over = numberIn(inchText);
  if (wholeFeet === undefined || over === undefined || over >= inchesInFoot) return undefined;
  return Number.isInteger(wholeFeet) ? scaled(wholeFeet * inchesInFoot + over, inchM) : undefined;
};

const scaled = (count: number | undefined, unitM: number): number | undefined =>
  count === undefined ? undefined : Number((count * unitM).toFixed(9));

/** Reads "12", "12.5", "12,5", "6 1/2" and "1/2"; undefined for a comma before exactly three digits. */
const numberIn = (text = ''): number | undefined => {
  if (/,\d{3}$/.test(text)) return undefined;
  const fraction = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(text);
  if (fraction === null) return Number(text.replace(',', '.'));
  const [, whole = '0', over, under] = fraction;
  return Number(under) === 0 ? undefined : Number(whole) + Number(over) / Number(under);
};
