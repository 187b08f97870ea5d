import { indexBoat } from '../../../core/boat/boat-index.ts';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import { crewSource } from '../../../core/facts/crew-items.ts';
import type { BoatLog } from '../../../core/log/boat-log.ts';
import { crewOf, crewRound } from '../../../core/proof/trial/crew-round.ts';
import type { Chapter } from '../binder-shape.ts';
import { sourceLine } from '../source-words.ts';

/** So many columns for names stand on the page, filled or free. */
const names = 4;

/** What everybody aboard is shown before the first passage, each to be ticked by name. */
export const crewChapter = (boat: Boat, log: BoatLog): Chapter => {
  const people = crewOf(log).slice(0, names);
  const heads = Array.from({ length: names }, (_, at) => people[at]);
  const nameOf = new Map(boat.kit.map(({ id, name }) => [id, name]));
  return {
    id: 'crew',
    title: 'Shown to the crew',
    blocks: [
      {
        kind: 'words',
        text: 'Before the first passage everybody does each of these once with their own hand. Write the name over a column, and the day where it was shown.',
      },
      {
        kind: 'table',
        table: {
          id: 'crew-shown',
          title: 'Shown to',
          columns: [
            { id: 'does', head: 'what', share: 3 },
            { id: 'at', head: 'at', share: 1.4 },
            ...heads.map((name, at) => ({
              id: `person-${at + 1}`,
              head: name ?? '………',
              kind: 'blank' as const,
              share: 0.8,
            })),
          ],
          rows: crewRound(indexBoat(boat), log).map(({ does, units, shown }) => [
            does,
            units.length === 0 ? undefined : units.map((id) => nameOf.get(id) ?? id).join(', '),
            ...heads.map((name) => (name === undefined ? undefined : shown.get(name))),
          ]),
          empty: 'Nothing is to be shown.',
        },
      },
      { kind: 'words', isQuiet: true, text: sourceLine([crewSource]) },
    ],
  };
};
