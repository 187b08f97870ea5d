import { limitOf } from '../../boat/limit-of.ts';
import type { Observation, Rule } from '../rule.ts';
import { limitPart } from '../rule-words.ts';
import { aboutFit, comesHere, mmWords, openingName } from './fit-words.ts';

/** A bezel hides an old hole only where its gasket lies on solid panel all round. */
export const holeShows: Rule = {
  id: 'fitting/hole-shows',
  level: 'doubt',
  title: 'An old hole shows at the edge of the new unit.',
  sources: ['choice-siting', 'practice-plates'],
  check: ({ index, plan }) =>
    plan.fits
      .filter(({ opening, verdict, case: which }) => {
        const asked = index.boat.openings?.find(({ id }) => id === opening);
        return which === 'shows' && ['plate', 'enlarge', 'as-it-is'].includes(verdict) && asked?.plate === undefined;
      })
      .map((fit): Observation => {
        const widest = fit.uncovered?.widestMm ?? 0;
        const plate = plan.plates.find(({ id }) => id === fit.plate)?.outline;
        const made = plate === undefined ? 'a plate' : `a plate of ${plate.widthMm} × ${mmWords(plate.heightMm)}`;
        return {
          about: aboutFit(fit),
          says: `${openingName(index, fit.opening)} reaches ${mmWords(widest)} beyond what ${comesHere(index, fit)} covers, with its gasket on solid panel.`,
          measured: { value: widest, unit: 'mm' },
          limit: limitPart(limitOf(index.boat, 'gasket-land')),
          cure: `Set it in ${made} over the hole, or fill the hole and have the panel refinished.`,
        };
      }),
};
