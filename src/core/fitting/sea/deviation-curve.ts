import { settingFigures } from '../../facts/setting-figures.ts';
import { solveEquations } from './solve-equations.ts';

/** Deviation of a compass on one heading, degrees, east positive. */
export interface DeviationPoint {
  readonly headingDeg: number;
  readonly deviationDeg: number;
}

/** The five coefficients of a deviation curve, degrees. */
export interface DeviationCoefficients {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
}

export interface DeviationCurve extends DeviationCoefficients {
  /** root of the mean square of what the curve leaves, degrees */
  readonly residualDeg: number;
  /** the greatest deviation on any heading, degrees, without its sign */
  readonly mostDeg: number;
}

const { 'curve-headings-least': least, 'curve-gap-most': gap } = settingFigures;

const termsAt = (headingDeg: number): readonly number[] => {
  const angle = (headingDeg * Math.PI) / 180;
  return [1, Math.sin(angle), Math.cos(angle), Math.sin(2 * angle), Math.cos(2 * angle)];
};

/** Deviation on a heading by the coefficients: A + B sin h + C cos h + D sin 2h + E cos 2h, degrees. */
export const deviationAt = ({ a, b, c, d, e }: DeviationCoefficients, headingDeg: number): number => {
  const terms = termsAt(headingDeg);
  return [a, b, c, d, e].reduce((sum, factor, at) => sum + factor * (terms[at] ?? 0), 0);
};

/** The widest stretch of headings without a point, degrees. */
export const widestGapDeg = (points: readonly DeviationPoint[]): number => {
  const turns = [...new Set(points.map(({ headingDeg }) => ((headingDeg % 360) + 360) % 360))].sort((x, y) => x - y);
  const [first] = turns;
  if (first === undefined) return 360;
  return Math.max(...turns.map((turn, at) => (turns[at + 1] ?? first + 360) - turn));
};

/**
 * The smooth curve through a swing by least squares: the sum of squares of what A + B sin h + C cos h + D sin 2h + E cos 2h
 * leaves is smallest. A is a turned card or lubber line, B and C magnetism along and across the boat, D and E soft iron.
 * Undefined for fewer than 8 headings or a gap of more than 60 degrees between two: a curve there is a guess.
 */
export const deviationCurve = (points: readonly DeviationPoint[]): DeviationCurve | undefined => {
  const headings = new Set(points.map(({ headingDeg }) => ((headingDeg % 360) + 360) % 360));
  if (headings.size < least.value || widestGapDeg(points) > gap.value) return undefined;
  const rows = points.map(({ headingDeg }) => termsAt(headingDeg));
  const sums = [0, 1, 2, 3, 4].map((row) =>
    [0, 1, 2, 3, 4].map((column) => rows.reduce((sum, terms) => sum + (terms[row] ?? 0) * (terms[column] ?? 0), 0)),
  );
  const right = [0, 1, 2, 3, 4].map((row) =>
    rows.reduce((sum, terms, at) => sum + (terms[row] ?? 0) * (points[at]?.deviationDeg ?? 0), 0),
  );
  const [a, b, c, d, e] = solveEquations(sums, right) ?? [];
  if (a === undefined || b === undefined || c === undefined || d === undefined || e === undefined) return undefined;
  const curve = { a, b, c, d, e };
  const left = points.map(({ headingDeg, deviationDeg }) => deviationDeg - deviationAt(curve, headingDeg));
  const around = Array.from({ length: 360 }, (_, degree) => Math.abs(deviationAt(curve, degree)));
  return {
    ...curve,
    residualDeg: Math.sqrt(left.reduce((sum, one) => sum + one * one, 0) / left.length),
    mostDeg: Math.max(...around),
  };
};
