import type { BoatIndex } from '../../boat/boat-index.ts';
import { limitOf } from '../../boat/limit-of.ts';
import type { FitEntry } from '../../fits-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { limitPart } from '../rule-words.ts';
import { aboutFit, isSet, mmWords, openingName } from './fit-words.ts';

const cutAway = (index: BoatIndex, fit: FitEntry): Observation[] => {
  const most = limitOf(index.boat, 'cut-away-most');
  if (fit.cutAwayPct === undefined || fit.cutAwayPct <= most.value) return [];
  return [
    {
      about: aboutFit(fit),
      apart: ['cut-away'],
      says: `${Math.round(fit.cutAwayPct)} % of the panel at ${openingName(index, fit.opening)} is cut away when all is done.`,
      measured: { value: fit.cutAwayPct, unit: '%' },
      limit: limitPart(most),
      cure: 'Glue a frame behind it, or make the whole face as one plate.',
    },
  ];
};

const notFlat = (index: BoatIndex, fit: FitEntry): Observation[] => {
  const most = limitOf(index.boat, 'panel-uneven-most');
  const unevenMm = index.boat.openings?.find(({ id }) => id === fit.opening)?.panel.unevenMm;
  if (unevenMm === undefined || unevenMm <= most.value) return [];
  return [
    {
      about: aboutFit(fit),
      apart: ['flat'],
      level: 'advice',
      says: `The panel at ${openingName(index, fit.opening)} is ${mmWords(unevenMm)} from flat over 300 mm; a gasket takes up ${mmWords(most.value)}.`,
      measured: { value: unevenMm, unit: 'mm' },
      limit: limitPart(most),
      cure: 'Fair it, or bed a stiff plate on it and set the unit in that.',
    },
  ];
};

/** What is left of a panel must carry the units, and lie flat under their gaskets. */
export const panelWeakOrWarped: Rule = {
  id: 'fitting/panel-weak-or-warped',
  level: 'doubt',
  title: 'A panel is cut away too far, or is not flat enough for a gasket.',
  sources: ['practice-cutting'],
  check: ({ index, plan }) =>
    plan.fits.filter(isSet).flatMap((fit) => [...cutAway(index, fit), ...notFlat(index, fit)]),
};
