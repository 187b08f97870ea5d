import type { BoatProblem } from '../boat-problem.ts';
import { type Known, linkTo } from './check-links.ts';

/** What is measured of a unit, or was tried with it, that is nowhere aboard. */
export const checkMeasures = ({ index }: Known): BoatProblem[] => {
  const { measures = {}, sea = {} } = index.boat;
  const of = (list: readonly { readonly unit?: string }[] | undefined, part: string, name: string): BoatProblem[] =>
    (list ?? []).flatMap(({ unit }, at) =>
      unit === undefined ? [] : linkTo(index.kit, { id: unit, what: 'unit', path: [part, name, at, 'unit'] }),
    );
  return [
    ...of(measures.airDraftParts, 'measures', 'airDraftParts'),
    ...of(measures.transducers, 'measures', 'transducers'),
    ...of(measures.screens, 'measures', 'screens'),
    ...of(measures.typed, 'measures', 'typed'),
    ...of(sea.logs, 'sea', 'logs'),
    ...of(sea.winds, 'sea', 'winds'),
    ...of(sea.leads, 'sea', 'leads'),
    ...of(sea.swings, 'sea', 'swings'),
  ];
};
