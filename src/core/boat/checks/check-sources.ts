import type { BoatProblem } from '../boat-problem.ts';
import { isSameChoice } from '../chosen-source.ts';
import { splitDotted } from '../ids.ts';
import { type Known, linkTo, linkToPort } from './check-links.ts';

/** Sources chosen at a unit or from a port that is not there, and one reading chosen twice for the same unit. */
export const checkSources = ({ index }: Known): BoatProblem[] => {
  const { sources = [] } = index.boat;
  return sources.flatMap((choice, at) => {
    const path = ['sources', at];
    const { kit, part: port } = splitDotted(choice.primary);
    const primary = [...path, 'primary'];
    const noUnit = linkTo(index.kit, { id: kit, what: 'unit', path: primary });
    const isTwice = sources.findIndex((other) => isSameChoice(other, choice)) < at;
    return [
      ...(choice.at === undefined ? [] : linkTo(index.kit, { id: choice.at, what: 'unit', path: [...path, 'at'] })),
      ...(noUnit.length > 0 ? noUnit : linkToPort(index, { kit, port, path: primary })),
      ...(isTwice
        ? [
            {
              path,
              says: `The source of ${choice.reading} is chosen twice for the same place.`,
              whatToDo: 'Take one of the two out.',
            },
          ]
        : []),
    ];
  });
};
