import type { SourceKey } from './sources.ts';

interface LengthDoubt {
  readonly lessPct: number;
  readonly morePct: number;
  readonly plusM: number;
  readonly atLeastM: number;
  readonly source: SourceKey;
}

/** Doubt of a length where the person entered none, by how it is known. */
export const lengthDoubt = {
  taped: { lessPct: 3, morePct: 3, plusM: 0.1, atLeastM: 0, source: 'practice-length-doubt' },
  papers: { lessPct: 10, morePct: 10, plusM: 0, atLeastM: 0, source: 'practice-length-doubt' },
  guessed: { lessPct: 10, morePct: 30, plusM: 0, atLeastM: 0.5, source: 'practice-length-doubt' },
} as const satisfies Record<'taped' | 'papers' | 'guessed', LengthDoubt>;
