import type { BoatProblem } from '../boat-problem.ts';
import { anyOf, type Known, linkTo } from './check-links.ts';

/** Photos of what is not in the file. */
export const checkPhotos = ({ index }: Known): BoatProblem[] => {
  const seen = anyOf(index.places, index.ways, index.kit, index.banks, index.panels);
  return (index.boat.photos ?? []).flatMap(({ of }, at) =>
    linkTo(seen, { id: of, what: 'place, way, unit, bank or panel', path: ['photos', at, 'of'] }),
  );
};
