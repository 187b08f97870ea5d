import type { Figure } from './figure.ts';
import type { SourceKey } from './sources.ts';

/** One American gauge. Areas are of the copper; a cable sold by this number may have as little as `least`. */
export interface AwgConductor {
  readonly size: string;
  readonly diameterMm: number;
  readonly areaMm2: number;
  /** absent where no least area was found: then the size is not used in automatic sizing */
  readonly least?: { readonly areaMm2: number; readonly circularMils: number; readonly source: SourceKey };
  readonly source: SourceKey;
}

type AwgRow = readonly [size: string, diameterMm: number, areaMm2: number, leastMm2?: number, leastMils?: number];

const awgRows: readonly AwgRow[] = [
  ['26', 0.4049, 0.1288],
  ['24', 0.5106, 0.2047],
  ['22', 0.6438, 0.3255],
  ['20', 0.8118, 0.5176],
  ['18', 1.0237, 0.823, 0.779, 1537],
  ['16', 1.2908, 1.3087, 1.184, 2336],
  ['14', 1.6277, 2.0809, 1.876, 3702],
  ['12', 2.0525, 3.3088, 2.956, 5833],
  ['10', 2.5882, 5.2612, 4.734, 9343],
  ['8', 3.2636, 8.3656, 7.504, 14810],
  ['6', 4.1154, 13.3018, 12.434, 24538],
  ['4', 5.1894, 21.1506, 18.931, 37360],
  ['3', 5.8273, 26.6705],
  ['2', 6.5437, 33.6308, 31.644, 62450],
  ['1', 7.3481, 42.4077, 39.417, 77790],
  ['1/0', 8.2515, 53.4751, 50.154, 98980],
  ['2/0', 9.2658, 67.4309, 63.389, 125100],
  ['3/0', 10.4049, 85.0288, 80.364, 158600],
  ['4/0', 11.684, 107.2193, 104.128, 205500],
];

const awgOf = ([size, diameterMm, areaMm2, leastMm2, leastMils]: AwgRow): AwgConductor => ({
  size,
  diameterMm,
  areaMm2,
  ...(leastMm2 === undefined || leastMils === undefined
    ? {}
    : { least: { areaMm2: leastMm2, circularMils: leastMils, source: 'sae-j1127' as const } }),
  source: 'astm-b258',
});

/** American gauges, thinnest first; 26 to 20 are for data pairs only. */
export const awgConductors: readonly AwgConductor[] = awgRows.map(awgOf);

/** One metric size and its largest resistance at 20 °C, ohm/km of one conductor; class 5 is the fine-stranded one of boats. */
export interface MetricConductor {
  readonly areaMm2: number;
  readonly class5Plain: number;
  readonly class5Tinned: number;
  readonly class2Plain: number;
  readonly class2Tinned: number;
  readonly source: SourceKey;
}

type MetricRow = readonly [areaMm2: number, five: number, fiveTinned: number, two: number, twoTinned: number];

const metricRows: readonly MetricRow[] = [
  [0.5, 39, 40.1, 36, 36.7],
  [0.75, 26, 26.7, 24.5, 24.8],
  [1, 19.5, 20, 18.1, 18.2],
  [1.5, 13.3, 13.7, 12.1, 12.2],
  [2.5, 7.98, 8.21, 7.41, 7.56],
  [4, 4.95, 5.09, 4.61, 4.7],
  [6, 3.3, 3.39, 3.08, 3.11],
  [10, 1.91, 1.95, 1.83, 1.84],
  [16, 1.21, 1.24, 1.15, 1.16],
  [25, 0.78, 0.795, 0.727, 0.734],
  [35, 0.554, 0.565, 0.524, 0.529],
  [50, 0.386, 0.393, 0.387, 0.391],
  [70, 0.272, 0.277, 0.268, 0.27],
  [95, 0.206, 0.21, 0.193, 0.195],
  [120, 0.161, 0.164, 0.153, 0.154],
  [150, 0.129, 0.132, 0.124, 0.126],
];

/** Metric sizes, thinnest first. */
export const metricConductors: readonly MetricConductor[] = metricRows.map(
  ([areaMm2, class5Plain, class5Tinned, class2Plain, class2Tinned]) => ({
    areaMm2,
    class5Plain,
    class5Tinned,
    class2Plain,
    class2Tinned,
    source: 'iec-60228-tables',
  }),
);

/** Small bunched cores of data pairs: largest resistance at 20 °C, ohm/km. */
export const smallCores = [
  { areaMm2: 0.14, plain: 134, tinned: 138, source: 'vde-0295' },
  { areaMm2: 0.22, plain: 96, tinned: 99, source: 'vde-0295' },
  { areaMm2: 0.25, plain: 76, tinned: 79, source: 'vde-0295' },
  { areaMm2: 0.34, plain: 53, tinned: 56, source: 'vde-0295' },
] as const;

/** Gauges in the order automatic sizing tries them; 3 AWG is left out. */
export const awgSizingOrder: readonly string[] = awgConductors
  .filter(({ least }) => least !== undefined)
  .map(({ size }) => size);

/** Constants of the drop formulas, ohm mm²/km of one conductor. Both are below what class 5 tinned cable may have. */
export const dropConstants = {
  /** K = 10.75 ohm cmil/ft: copper at 29 °C */
  abyc: { value: 17.87, unit: 'ohm mm²/km', source: 'abyc-e11' },
  abycCircularMils: { value: 10.75, unit: 'ohm cmil/ft', source: 'abyc-e11' },
  iso: { value: 16.4, unit: 'ohm mm²/km', source: 'iso-13297' },
  circularMil: { value: 0.000506707, unit: 'mm²', source: 'astm-b258' },
  /** R(t) = R20 (230 + t) / 250 */
  temperatureBase: { value: 230, unit: '°C', source: 'iec-60228-tables' },
} as const satisfies Record<string, Figure>;

interface LeastSize {
  readonly rule: string;
  readonly awg?: string;
  readonly areaMm2?: number;
  readonly outOfSheathMm?: number;
  readonly source: SourceKey;
}

/**
 * Least sizes by rule. The first two do not bind communications, electronic navigation equipment, circuits under 1 A,
 * pigtails under 178 mm and what is inside a unit, so data pairs of 22 or 24 AWG are lawful.
 */
export const leastSizes: readonly LeastSize[] = [
  { rule: 'single conductor', awg: '16', source: 'cfr-33-183-425' },
  { rule: 'conductor in a sheath', awg: '18', outOfSheathMm: 762, source: 'cfr-33-183-425' },
  { rule: 'single conductor longer than 200 mm', areaMm2: 1, source: 'iso-13297' },
  { rule: 'conductor in a sheath (ISO)', areaMm2: 0.75, outOfSheathMm: 800, source: 'iso-13297' },
  { rule: 'power and lighting on inspected vessels', awg: '14', source: 'cfr-46-183-340' },
  { rule: 'control and indicator on inspected vessels', awg: '22', source: 'cfr-46-183-340' },
];

/** Where the least sizes do not bind. The first two are of the American text, the third of the metric one. */
export const leastSizeExempt = {
  /** electronic circuits */
  belowCurrent: { value: 1, unit: 'A', source: 'cfr-33-183-425' },
  pigtailBelow: { value: 178, unit: 'mm', source: 'cfr-33-183-425' },
  /** a conductor alone, no longer than this */
  aloneUpTo: { value: 200, unit: 'mm', source: 'iso-13297' },
} as const satisfies Record<string, Figure>;

/** Temperature a conductor is reckoned at for the volts it loses. */
export const workingTemperatures = {
  elsewhere: { value: 30, unit: '°C', source: 'choice-conductor-basis' },
  engineSpace: { value: 50, unit: '°C', source: 'choice-conductor-basis' },
} as const satisfies Record<string, Figure>;

const names: ReadonlyMap<string, string> = new Map([
  ['0', '1/0'],
  ['00', '2/0'],
  ['000', '3/0'],
  ['0000', '4/0'],
]);
const byAwg: ReadonlyMap<string, AwgConductor> = new Map(awgConductors.map((row) => [row.size, row]));
const byArea: ReadonlyMap<number, MetricConductor> = new Map(metricConductors.map((row) => [row.areaMm2, row]));

/**
 * The gauge of that name, or undefined.
 *
 * @example conductorOfAwg('2/0') // also '00'; { areaMm2: 67.43, least: { areaMm2: 63.389, … }, … }
 */
export const conductorOfAwg = (size: string): AwgConductor | undefined => byAwg.get(names.get(size) ?? size);

/** The metric conductor of exactly that area in mm², or undefined. */
export const conductorOfMm2 = (areaMm2: number): MetricConductor | undefined => byArea.get(areaMm2);

/** The smallest metric size that is not thinner than a gauge's nominal area, or undefined above the table. Never rounds down. */
export const metricFor = ({ areaMm2 }: Pick<AwgConductor, 'areaMm2'>): MetricConductor | undefined =>
  metricConductors.find((row) => row.areaMm2 >= areaMm2);
