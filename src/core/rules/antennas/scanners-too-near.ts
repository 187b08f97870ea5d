import { scannerFigures } from '../../facts/antenna-figures.ts';
import type { Observation, Rule } from '../rule.ts';
import { figurePart, metres, unitName } from '../rule-words.ts';

/** Two scanners light each other up. */
export const scannersTooNear: Rule = {
  id: 'antennas/scanners-too-near',
  level: 'advice',
  title: 'Two scanners stand close beside each other.',
  sources: ['practice-scanner-neighbours'],
  check: ({ index, plan }) =>
    plan.scanners
      .filter(({ verdict }) => verdict !== 'ok')
      .map(
        ({ one, other, acrossM, upM }): Observation => ({
          about: [one, other],
          says: `${unitName(index, one)} and ${unitName(index, other)} stand ${metres(acrossM)} apart and ${metres(upM)} one over the other; books ask for ${scannerFigures.twoUp.value} m in height or ${scannerFigures.twoAcross.value} m across.`,
          measured: { value: upM, unit: 'm' },
          limit: figurePart(scannerFigures.twoUp),
          cure: 'Ask the makers of both what they want; else mount one at least half a metre higher.',
        }),
      ),
};
