import type { BoatProblem } from '../boat-problem.ts';
import { type Known, linkTo } from './check-links.ts';

/** What the work says of circuits, hands, places, units and cables that are not aboard. Jobs that are not there are no bad input: a doubt of the plan. */
export const checkWork = ({ index }: Known): BoatProblem[] => {
  const { work = {}, supply } = index.boat;
  const given = new Set([
    ...supply.banks.map(({ id }) => id),
    ...supply.panels.flatMap((panel) => [panel.id, ...panel.circuits.map(({ id }) => `${panel.id}.${id}`)]),
  ]);
  const hands = new Set((work.hands ?? []).map(({ id }) => id));
  return [
    ...(work.essentials ?? []).flatMap(({ on = [] }, at) =>
      on.flatMap((id, onAt) =>
        linkTo(given, { id, what: 'circuit, panel or bank', path: ['work', 'essentials', at, 'on', onAt] }),
      ),
    ),
    ...(work.jobs ?? []).flatMap(({ hand }, at) =>
      hand === undefined ? [] : linkTo(hands, { id: hand, what: 'hand', path: ['work', 'jobs', at, 'hand'] }),
    ),
    ...(work.own ?? []).flatMap(({ place }, at) =>
      place === undefined ? [] : linkTo(index.places, { id: place, what: 'place', path: ['work', 'own', at, 'place'] }),
    ),
    ...(work.leaving ?? []).flatMap(({ unit, with: cables = [] }, at) => [
      ...linkTo(index.kit, { id: unit, what: 'unit', path: ['work', 'leaving', at, 'unit'] }),
      ...cables.flatMap((id, withAt) =>
        linkTo(index.cables, { id, what: 'cable', path: ['work', 'leaving', at, 'with', withAt] }),
      ),
    ]),
  ];
};
