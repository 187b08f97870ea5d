import { limitOf } from '../../boat/limit-of.ts';
import type { Observation, Rule } from '../rule.ts';
import { limitPart } from '../rule-words.ts';
import { aboutFit, isSet, mmWords, openingName } from './fit-words.ts';

const sideWords = { left: 'to the left of', right: 'to the right of', above: 'above', below: 'below' } as const;

/** A strip of panel between a cut-out and a free edge must hold. */
export const edgeTooNear: Rule = {
  id: 'fitting/edge-too-near',
  level: 'doubt',
  title: 'A cut-out comes near to the free edge of its panel.',
  sources: ['practice-cutting'],
  check: ({ index, plan }) =>
    plan.fits.flatMap((fit) =>
      (isSet(fit) || fit.case === 'no-room' ? (fit.margins ?? []) : [])
        .filter(({ leftMm, needMm }) => leftMm < needMm)
        .map(
          ({ side, leftMm, needMm }): Observation => ({
            about: aboutFit(fit),
            apart: [side],
            ...(leftMm < 0 ? { level: 'fault' } : {}),
            says:
              leftMm < 0
                ? `The cut-out at ${openingName(index, fit.opening)} reaches ${mmWords(-leftMm)} over the edge of the panel, ${sideWords[side]}.`
                : `${mmWords(leftMm)} of panel is left ${sideWords[side]} the cut-out at ${openingName(index, fit.opening)}; ${mmWords(needMm)} holds.`,
            measured: { value: leftMm, unit: 'mm' },
            limit: { ...limitPart(limitOf(index.boat, 'panel-edge-least')), value: needMm },
            cure: 'Choose a smaller unit, another place, or a plate or frame that carries the edge.',
          }),
        ),
    ),
};
