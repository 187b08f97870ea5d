import type { BoatIndex } from '../boat/boat-index.ts';
import type { LineEntry } from '../plan-shape.ts';
import { cutLine, type OrderInput } from './line-cutter.ts';
import { type LineParts, lengthWith } from './line-parts.ts';
import type { Pieces } from './pieces-for.ts';
import type { Doubt } from './want.ts';

/** A way or a tail as people call it: "from panel to helm", "the tail of the display". */
export const aboutWords = (index: BoatIndex, about: string): string => {
  const way = index.ways.get(about);
  if (way === undefined) return `the tail of ${index.kit.get(about)?.name ?? about}`;
  const [one, other] = way.ends.map((place) => index.places.get(place)?.name ?? place);
  return `the way from ${one ?? ''} to ${other ?? ''}`;
};

const samePieces = (one: Pieces | undefined, other: Pieces | undefined): boolean =>
  one?.pieces.length === other?.pieces.length &&
  (one?.pieces ?? []).every(({ mm, made }, n) => other?.pieces[n]?.mm === mm && other.pieces[n]?.made === made);

/**
 * What could change the pieces of a line: guessed lengths that turn out shorter, ways that turn out shut. Absent where nothing
 * open would. With everything guessed at its longest the pieces cover all the same.
 */
export const lineDoubt = (input: OrderInput, line: LineEntry, lineParts: LineParts): Doubt | undefined => {
  const { index } = input;
  const guessed = lineParts.parts.filter(({ how }) => how === 'guessed');
  const assumed = line.ways.filter((id) => index.ways.get(id)?.known === 'assumed');
  const isSettled =
    guessed.length === 0 ||
    samePieces(
      cutLine(
        input,
        line,
        lengthWith(lineParts, (part) => (part.how === 'guessed' ? part.shortestMm : part.longestMm)),
      ),
      cutLine(
        input,
        line,
        lengthWith(lineParts, (part) => part.longestMm),
      ),
    );
  if (isSettled && assumed.length === 0) return undefined;
  return {
    shorter: isSettled ? [] : guessed.map(({ about }) => aboutWords(index, about)),
    shut: assumed.map((id) => aboutWords(index, id)),
  };
};
