import type { BoatIndex } from '../../boat/boat-index.ts';
import { airGaps, boxHeat } from '../../facts/opening-figures.ts';
import type { FitEntry } from '../../fits-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { figurePart } from '../rule-words.ts';
import { aboutFit, comesHere, isSet, mmWords, openingName } from './fit-words.ts';

const tooWarm = (index: BoatIndex, fit: FitEntry): Observation[] => {
  const { riseK, powerW, areaM2 } = fit.heat ?? {};
  if (riseK === undefined || riseK <= boxHeat.mostRise.value) return [];
  return [
    {
      about: aboutFit(fit),
      apart: ['heat'],
      says: `${comesHere(index, fit)} gives off up to ${powerW?.toFixed(0)} W into a closed room of ${areaM2?.toFixed(2)} m² of walls: it gets some ${Math.round(riseK)} K warmer there.`,
      measured: { value: riseK, unit: 'K' },
      limit: figurePart(boxHeat.mostRise),
      cure: 'Give the room two vents, one low and one high, or open it to a larger one.',
    },
  ];
};

const noAir = (index: BoatIndex, fit: FitEntry): Observation[] => {
  const [worst] = (fit.air ?? [])
    .filter(({ leftMm, needMm }) => leftMm < needMm)
    .toSorted((a, b) => a.leftMm - a.needMm - b.leftMm + b.needMm);
  if (worst === undefined) return [];
  return [
    {
      about: aboutFit(fit),
      apart: ['air'],
      level: 'advice',
      says: `Behind ${openingName(index, fit.opening)} ${mmWords(Math.max(0, worst.leftMm))} of air is left ${worst.side === 'above' ? 'above' : 'beside'} ${comesHere(index, fit)}; ${mmWords(worst.needMm)} lets its warmth rise.`,
      measured: { value: worst.leftMm, unit: 'mm' },
      limit: figurePart(worst.side === 'above' ? airGaps.above : airGaps.beside),
      cure: 'Set it otherwise in the room, or see that air gets out above it.',
    },
  ];
};

/** What a display draws becomes warmth behind the panel. */
export const hotBehind: Rule = {
  id: 'fitting/hot-behind',
  level: 'doubt',
  title: 'Warmth of a unit does not get out from behind the panel.',
  sources: ['memory-box-heat', 'choice-box-rise', 'practice-air-gaps'],
  check: ({ index, plan }) => plan.fits.filter(isSet).flatMap((fit) => [...tooWarm(index, fit), ...noAir(index, fit)]),
};
