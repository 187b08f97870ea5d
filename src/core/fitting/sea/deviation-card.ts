import { type DeviationCoefficients, deviationAt } from './deviation-curve.ts';

/** Headings of a card stand so far apart, degrees. */
export const cardStepDeg = 15;

const headings = Array.from({ length: 360 / cardStepDeg }, (_, at) => at * cardStepDeg);

/** Deviation by a curve on every heading of a card, from north round, degrees. */
export const deviationCard = (curve: DeviationCoefficients): number[] =>
  headings.map((heading) => deviationAt(curve, heading));
