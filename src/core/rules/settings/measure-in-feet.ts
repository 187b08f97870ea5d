import type { Boat } from '../../boat/boat-schema.ts';
import { hullMeasures } from '../../facts/hull-measures.ts';
import { isDraftInFeet, unitSlip } from '../../fitting/settings/feet-for-metres.ts';
import { boatPatterns } from '../../starting/patterns/index.ts';
import type { Rule } from '../rule.ts';
import { metres } from '../rule-words.ts';

/** The deepest draft and the highest air draft that boats of a kind usually have, metres. */
const usualOf = ({ kind, lengthM }: Boat['hull']): { draftM: number; airDraftM: number } => {
  const own = boatPatterns.filter((pattern) => pattern.kind === kind).map(({ id }) => hullMeasures[id]);
  return {
    draftM: Math.max(...own.map(({ draftShare }) => draftShare)) * lengthM,
    airDraftM: Math.max(...own.map(({ airDraftShare }) => airDraftShare)) * lengthM,
  };
};

/** Draft or air draft of the boat file look as if feet were taken for metres. */
export const measureInFeet: Rule = {
  id: 'settings/measure-in-feet',
  level: 'doubt',
  title: 'Draft or air draft look like feet taken for metres.',
  sources: ['choice-feet-for-metres', 'practice-hull-measures'],
  check: ({ index: { boat } }) => {
    const { lengthM, draftM, airDraft } = boat.hull;
    const usual = usualOf(boat.hull);
    const isSlip = (typedM: number, wantedM: number): boolean => unitSlip({ typedM, wantedM }) === 'feet-as-metres';
    const says = (what: string, valueM: number, wantedM: number): string =>
      `The ${what} is ${metres(valueM)} on a boat of ${metres(lengthM)}, where such boats have about ${metres(wantedM)}: feet taken for metres?`;
    const cure = 'Measure it, and enter it in metres or with its unit, such as 6 ft 5.';
    return [
      ...(isDraftInFeet({ lengthM, draftM }) || isSlip(draftM, usual.draftM)
        ? [
            {
              about: [],
              apart: ['draft'],
              says: says('draft', draftM, usual.draftM),
              measured: { value: draftM, unit: 'm' },
              cure,
            },
          ]
        : []),
      ...(isSlip(airDraft.valueM, usual.airDraftM)
        ? [
            {
              about: [],
              apart: ['air-draft'],
              says: says('air draft', airDraft.valueM, usual.airDraftM),
              measured: { value: airDraft.valueM, unit: 'm' },
              cure,
            },
          ]
        : []),
    ];
  },
};
