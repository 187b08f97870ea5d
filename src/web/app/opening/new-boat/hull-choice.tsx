import type { ReactNode } from 'react';
import type { HullMeasuresId } from '../../../../core/facts/hull-measures.ts';
import { boatFromPattern } from '../../../../core/starting/boat-from-pattern.ts';
import { boatPatterns } from '../../../../core/starting/patterns/index.ts';
import { hullDrawing } from '../../../../papers/starting/hull-drawing.ts';
import { StillDrawing } from '../../../drawing/still-drawing.tsx';
import { words } from './words.ts';

const tile = { widthMm: 36, heightMm: 30 };
const hulls = boatPatterns.map(({ id }) => ({
  id,
  drawing: hullDrawing(boatFromPattern({ pattern: id, name: id }), tile),
}));

/** The hull patterns, each by its own drawing; one is chosen. */
export const HullChoice = ({
  chosen,
  onChoose,
}: {
  chosen: HullMeasuresId | undefined;
  onChoose: (pattern: HullMeasuresId) => void;
}): ReactNode => (
  <fieldset className="hulls">
    <legend>{words.what}</legend>
    {hulls.map(({ id, drawing }) => (
      <label key={id} className="hull">
        <input type="radio" name="pattern" value={id} checked={id === chosen} onChange={() => onChoose(id)} />
        <StillDrawing drawing={drawing} />
        <span>{words.hull[id]}</span>
      </label>
    ))}
  </fieldset>
);
