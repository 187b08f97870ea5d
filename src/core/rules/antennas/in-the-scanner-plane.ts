import { inPlaneWarn, scannerFigures } from '../../facts/antenna-figures.ts';
import type { Observation, Rule } from '../rule.ts';
import { figurePart, metres, unitName } from '../rule-words.ts';

/** An antenna in the beam is heated and deafened by it, and shadows it. */
export const inTheScannerPlane: Rule = {
  id: 'antennas/in-the-scanner-plane',
  level: 'doubt',
  title: 'An antenna stands in the plane of a radar scanner.',
  sources: ['practice-scanner-neighbours'],
  check: ({ index, plan }) =>
    plan.sites.flatMap(({ unit, radar }) =>
      (radar?.neighbours ?? [])
        .filter(({ inPlane }) => inPlane)
        .map(
          ({ unit: other, distanceM, offPlaneDeg }): Observation => ({
            about: [other, unit],
            ...(distanceM < inPlaneWarn.value ? {} : { level: 'advice' }),
            says: `${unitName(index, other)} stands ${metres(distanceM)} from ${unitName(index, unit)}, ${planeWords(offPlaneDeg)} the plane it turns in.`,
            measured: { value: Math.abs(offPlaneDeg), unit: '°' },
            limit: figurePart(scannerFigures.planeWithin),
            cure: 'Move the antenna higher or lower, so that it stands more than 20 degrees over or under the plane of the scanner.',
          }),
        ),
    ),
};

const planeWords = (deg: number): string =>
  Math.abs(deg) < 0.5 ? 'in' : `${Math.abs(deg).toFixed(0)}° ${deg > 0 ? 'over' : 'under'}`;
