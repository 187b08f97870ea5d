/** A share to a tenth, for example "9.6 %". */
export const printPct = (sharePct: number): string => `${sharePct.toFixed(1)} %`;

/** A wait to a tenth of a millisecond, for example "4.5 ms". */
export const printMs = (waitMs: number): string => `${waitMs.toFixed(1)} ms`;

/** A layout's cost, which is in thousandths of a hundredth, as money, for example "571.63 EUR". */
export const printCost = ({ cost, currency }: { cost: number; currency: string }): string =>
  `${(cost / 100_000).toFixed(2)} ${currency}`;

/** A count with its word, for example "1 length" or "3 lengths". */
export const printCount = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

const units = ['m', 'mm', 'mm²', 'km', 'in', 'ft', 'V', 'mV', 'A', 'Ah', 'W', 'Ω', '%', 'LEN', 'ms', 's', 'h', 'EUR'];
const figureAndUnit = new RegExp(`(\\d) (?=(?:${units.join('|')})(?:[\\s.,;:)]|$))`, 'g');

/** Keeps each figure on one line with its unit, for example "8.60 m". */
export const keepUnits = (words: string): string => words.replace(figureAndUnit, '$1\u00A0');
