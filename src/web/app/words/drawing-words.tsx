import type { ReactNode } from 'react';
import type { Drawing, Shape } from '../../../papers/drawing/shapes.ts';
import { WordList } from './all-words.tsx';
import { useGlossary } from './use-glossary.ts';
import { words } from './words.ts';

const textsOf = (shapes: readonly Shape[]): string[] =>
  shapes.flatMap((shape) => {
    if (shape.kind === 'text') return [shape.text];
    return shape.kind === 'group' ? textsOf(shape.shapes) : [];
  });

/** The trade words that stand on a drawing, with what they mean. */
export const DrawingWords = ({ drawing }: { drawing: Drawing }): ReactNode => {
  const texts = [...new Set(textsOf(drawing.shapes))];
  const terms = useGlossary()?.termsIn(texts, texts) ?? [];
  return (
    <section className="drawing-words" aria-label={words.onDrawing}>
      <WordList terms={terms} />
    </section>
  );
};
