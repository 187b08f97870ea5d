import { scannerFigures } from '../../facts/antenna-figures.ts';
import type { Observation, Rule } from '../rule.ts';
import { figurePart, metres, unitName } from '../rule-words.ts';

/** The turning circle and a hand’s length stay free. */
export const scannerHasNoRoom: Rule = {
  id: 'antennas/scanner-has-no-room',
  level: 'doubt',
  title: 'Something stands in the circle a scanner turns in.',
  sources: ['practice-scanner-neighbours', 'memory-scanners'],
  check: ({ index, plan }) =>
    plan.sites.flatMap(({ unit, radar }) =>
      radar === undefined
        ? []
        : radar.neighbours
            .filter(({ inTurn }) => inTurn)
            .map(({ unit: other, distanceM }): Observation => {
              const wantedM = radar.acrossM / 2 + scannerFigures.turningMore.value;
              return {
                about: [unit, other],
                says: `${unitName(index, other)} stands ${metres(distanceM)} from the middle of ${unitName(index, unit)}; its circle and 200 mm want ${metres(wantedM)}.`,
                measured: { value: distanceM, unit: 'm' },
                limit: figurePart({ ...scannerFigures.turningMore, value: wantedM }),
                cure: 'Move one of the two, and turn the array by hand once before it is switched on.',
              };
            }),
    ),
};
