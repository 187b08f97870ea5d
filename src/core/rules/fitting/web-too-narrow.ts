import type { BoatIndex } from '../../boat/boat-index.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import { limitOf } from '../../boat/limit-of.ts';
import type { FitEntry } from '../../fits-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { limitPart } from '../rule-words.ts';
import { mmWords, openingName } from './fit-words.ts';

const tooNarrow = (index: BoatIndex, { opening, webs = [] }: FitEntry): Observation[] =>
  webs
    .filter(({ to, leftMm, needMm }) => byCodeUnit(opening, to) < 0 && leftMm < needMm)
    .map(({ to, leftMm, needMm }) => ({
      about: [opening, to],
      says: `${mmWords(Math.max(0, leftMm))} is left between ${openingName(index, opening)} and ${openingName(index, to)}; ${mmWords(needMm)} keeps the panel whole.`,
      measured: { value: leftMm, unit: 'mm' },
      limit: { ...limitPart(limitOf(index.boat, 'web-least')), value: needMm },
      cure: 'Set one of them further off, put both in one plate, or back the panel with a frame.',
    }));

const overEachOther = (index: BoatIndex, { opening, crowds = [] }: FitEntry): Observation[] =>
  crowds
    .filter(({ with: other }) => byCodeUnit(opening, other) < 0)
    .map(({ with: other, byMm }) => ({
      about: [opening, other],
      apart: ['covers'],
      says: `What covers ${openingName(index, opening)} lies ${mmWords(byMm)} over what covers ${openingName(index, other)}.`,
      measured: { value: byMm, unit: 'mm' },
      cure: 'Put both in one plate, or choose a smaller unit for one of them.',
    }));

/** A narrow web between two cut-outs cracks. */
export const webTooNarrow: Rule = {
  id: 'fitting/web-too-narrow',
  level: 'fault',
  title: 'Too little of the panel is left between two cut-outs.',
  sources: ['choice-siting'],
  check: ({ index, plan }) => plan.fits.flatMap((fit) => [...tooNarrow(index, fit), ...overEachOther(index, fit)]),
};
