import { explain, explainNames, termsIn } from '../../../papers/glossary/explain.ts';
import { glossary, termOf } from '../../../papers/glossary/glossary.ts';

/** The glossary and what finds its words, as one part that the page brings once it stands. */
export const glossaryPart = { explain, explainNames, glossary, termOf, termsIn } as const;

export type GlossaryPart = typeof glossaryPart;
