import type { BoatIndex } from '../../boat/boat-index.ts';
import { viewing } from '../../facts/opening-figures.ts';
import type { FitEntry } from '../../fits-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';
import { aboutFit, comesHere, isSet, mmWords } from './fit-words.ts';

const badlySeen = (index: BoatIndex, fit: FitEntry): Observation[] => {
  const deg = fit.view?.belowEyeDeg;
  if (deg === undefined || (deg >= viewing.belowEyeLeast.value && deg <= viewing.belowEyeMost.value)) return [];
  const isHigh = deg < viewing.belowEyeLeast.value;
  return [
    {
      about: aboutFit(fit),
      apart: ['seen'],
      says: `The middle of ${comesHere(index, fit)} is ${Math.round(deg)}° below the line of the eye, too ${isHigh ? 'high' : 'low'}.`,
      measured: { value: deg, unit: '°' },
      limit: figurePart(isHigh ? viewing.belowEyeLeast : viewing.belowEyeMost),
      cure: 'Set its middle 15 to 30 degrees below the eye, or tilt it towards the eye.',
    },
  ];
};

const outOfReach = (index: BoatIndex, fit: FitEntry): Observation[] => {
  const reachMm = fit.view?.reachMm;
  if (reachMm === undefined || reachMm <= viewing.reach.value) return [];
  return [
    {
      about: aboutFit(fit),
      apart: ['reached'],
      says: `${comesHere(index, fit)} is ${mmWords(reachMm)} from the shoulder; ${mmWords(viewing.reach.value)} is reached without leaning.`,
      measured: { value: reachMm, unit: 'mm' },
      limit: figurePart(viewing.reach),
      cure: 'Bring it nearer, or give it a keypad within reach.',
    },
  ];
};

/** A screen is looked down on a little, and worked without letting go of the wheel. */
export const badlySeenOrReached: Rule = {
  id: 'fitting/badly-seen-or-reached',
  level: 'advice',
  title: 'A screen is set too high, too low or out of reach.',
  sources: ['practice-viewing'],
  check: ({ index, plan }) =>
    plan.fits.filter(isSet).flatMap((fit) => [...badlySeen(index, fit), ...outOfReach(index, fit)]),
};
