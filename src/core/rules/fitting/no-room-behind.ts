import type { BoatIndex } from '../../boat/boat-index.ts';
import { roomBehind } from '../../facts/opening-figures.ts';
import type { FitEntry } from '../../fits-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';
import { aboutFit, comesHere, mmWords, openingName } from './fit-words.ts';

const tooShallow = (index: BoatIndex, fit: FitEntry): Observation[] => {
  const { needMm, freeMm } = fit.behind ?? {};
  if (index.kit.get(fit.unit ?? '')?.fate !== 'comes') return [];
  if (needMm === undefined || freeMm === undefined || freeMm >= needMm + roomBehind.spare.value) return [];
  const short = needMm - freeMm;
  const who = comesHere(index, fit);
  const where = openingName(index, fit.opening);
  const isShort = short > 0;
  return [
    {
      about: aboutFit(fit),
      ...(isShort ? {} : { level: 'doubt' }),
      says: isShort
        ? `${who} needs ${mmWords(needMm)} behind ${where} with its plugs; ${mmWords(freeMm)} is free.`
        : `Behind ${where} ${who} has ${mmWords(-short)} to spare with its plugs.`,
      measured: { value: freeMm, unit: 'mm' },
      limit: isShort
        ? { value: needMm, unit: 'mm', source: figurePart(roomBehind.bend).source }
        : { ...figurePart(roomBehind.spare), value: needMm + roomBehind.spare.value },
      cure: isShort
        ? 'Choose a flatter unit, set it out by a frame as thick as what lacks, or give it a bracket or another place.'
        : 'Measure the depth behind once more, at every corner, before anything is cut.',
    },
  ];
};

const inTheWay = (index: BoatIndex, fit: FitEntry): Observation[] =>
  (fit.obstacles ?? []).map(({ what, byMm, fromMm }) => ({
    about: aboutFit(fit),
    apart: [what],
    says: `${what} stands ${mmWords(byMm)} into the way of ${comesHere(index, fit)}, ${mmWords(fromMm)} behind ${openingName(index, fit.opening)}.`,
    measured: { value: byMm, unit: 'mm' },
    cure: 'Move it, or find the unit another place or a bracket.',
  }));

/** Body, plugs and the bend of their cables must fit behind the panel. */
export const noRoomBehind: Rule = {
  id: 'fitting/no-room-behind',
  level: 'fault',
  title: 'There is no room behind the panel for the new unit.',
  sources: ['practice-depth-behind', 'choice-depth-to-spare'],
  check: ({ index, plan }) => plan.fits.flatMap((fit) => [...tooShallow(index, fit), ...inTheWay(index, fit)]),
};
