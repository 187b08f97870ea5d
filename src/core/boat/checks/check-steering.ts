import type { BoatProblem } from '../boat-problem.ts';
import { splitDotted } from '../ids.ts';
import type { FilePath } from '../place-in-file.ts';
import { type Known, linkTo } from './check-links.ts';

const checkCircuit = ({ index }: Known, named: string, path: FilePath): BoatProblem[] => {
  const { kit: panel, part: circuit } = splitDotted(named);
  const missing = linkTo(index.panels, { id: panel, what: 'panel', path });
  if (missing.length > 0) return missing;
  const circuits = new Map((index.panels.get(panel)?.circuits ?? []).map((entry) => [entry.id, entry]));
  return linkTo(circuits, { id: circuit, what: 'circuit', owner: panel, path });
};

/** Steering places, and ways to make the pilot let go, that are nowhere. */
export const checkSteering = (known: Known): BoatProblem[] =>
  (known.index.boat.steering ?? []).flatMap(({ place, letsGo }, at) => [
    ...linkTo(known.index.places, { id: place, what: 'place', path: ['steering', at, 'place'] }),
    ...letsGo.flatMap((way, wayAt) => {
      const path = ['steering', at, 'letsGo', wayAt];
      return [
        ...(way.at === undefined
          ? []
          : linkTo(known.index.places, { id: way.at, what: 'place', path: [...path, 'at'] })),
        ...(way.circuit === undefined ? [] : checkCircuit(known, way.circuit, [...path, 'circuit'])),
      ];
    }),
  ]);
