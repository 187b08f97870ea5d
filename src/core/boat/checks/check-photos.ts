import type { BoatProblem } from '../boat-problem.ts';
import { anyOf, type Known, linkTo } from './check-links.ts';

/** Photos of what is not in the file. */
export const checkPhotos = ({ index }: Known): BoatProblem[] => {
  const openings = new Map((index.boat.openings ?? []).map((opening) => [opening.id, opening]));
  const seen = anyOf(index.places, index.ways, index.kit, index.banks, index.panels, openings);
  return (index.boat.photos ?? []).flatMap(({ of }, at) =>
    linkTo(seen, { id: of, what: 'place, way, unit, bank, panel or opening', path: ['photos', at, 'of'] }),
  );
};
