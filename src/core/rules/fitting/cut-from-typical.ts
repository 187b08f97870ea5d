import type { BoatIndex } from '../../boat/boat-index.ts';
import type { FitEntry } from '../../fits-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { aboutFit, comesHere, openingName } from './fit-words.ts';

const isToCut = ({ boat }: BoatIndex, opening: string): boolean =>
  boat.openings?.find(({ id }) => id === opening)?.toCut === true;

const cutNow = (index: BoatIndex, fit: FitEntry): Observation => {
  const isGuessed = fit.notForCutting?.includes('typical-sizes') !== true;
  return {
    about: aboutFit(fit),
    says: isGuessed
      ? `${openingName(index, fit.opening)} is to be cut now, and its size is only guessed.`
      : `${openingName(index, fit.opening)} is to be cut now, and the sizes of ${comesHere(index, fit)} are those usual for its kind.`,
    cure: isGuessed
      ? 'Measure the hole with a rule, twice, and say so.'
      : 'Enter body, cut-out and screws from its manual, or measured on the unit in hand. Until then its template is not for cutting.',
  };
};

/** Nothing is cut by the usual sizes of a class. */
export const cutFromTypical: Rule = {
  id: 'fitting/cut-from-typical',
  level: 'fault',
  title: 'A hole would be cut by sizes that nobody has read.',
  sources: ['practice-display-envelope'],
  check: ({ index, plan }) =>
    plan.fits
      .filter(({ opening, notForCutting = [] }) => notForCutting.length > 0 && isToCut(index, opening))
      .map((fit) => cutNow(index, fit)),
};
