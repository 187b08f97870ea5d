import type { BoatProblem } from '../boat-problem.ts';
import { splitDotted } from '../ids.ts';
import { isSameProof } from '../proved.ts';
import { type Known, linkTo, linkToPort } from './check-links.ts';

/** Readings proved at a port that is not there, or proved twice. */
export const checkProved = ({ index }: Known): BoatProblem[] => {
  const { proved = [] } = index.boat.proof ?? {};
  return proved.flatMap((entry, at) => {
    const path = ['proof', 'proved', at];
    const { kit, part: port } = splitDotted(entry.from);
    const from = [...path, 'from'];
    const noUnit = linkTo(index.kit, { id: kit, what: 'unit', path: from });
    const isTwice = proved.findIndex((other) => isSameProof(other, entry)) < at;
    return [
      ...(noUnit.length > 0 ? noUnit : linkToPort(index, { kit, port, path: from })),
      ...(isTwice
        ? [
            {
              path,
              says: `That ${entry.reading} was proved from ${entry.from} is said twice.`,
              whatToDo: 'Take one of the two out.',
            },
          ]
        : []),
    ];
  });
};
