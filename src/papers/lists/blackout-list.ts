import { failureWords } from '../../core/blackouts/failure-words.ts';
import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ListTable } from '../table/list-table.ts';

/** What each failure takes: a row for each reading that goes off a screen, and one for a failure that takes none. */
export const blackoutList = (boat: Boat, plan: Plan): ListTable => {
  const index = indexBoat(boat);
  const points = new Set(
    plan.vitals.flatMap(({ of, points: own }) => own.map(({ fails, how }) => `${of} ${how} ${fails}`)),
  );
  return {
    id: 'blackouts',
    title: 'What goes dark',
    says: 'What each single failure takes off which screen.',
    columns: [
      { id: 'fails', head: 'what fails', share: 2, once: true },
      { id: 'reading', head: 'reading', share: 1.4 },
      { id: 'at', head: 'goes off', share: 1.6 },
      { id: 'certain', head: 'for certain', share: 0.8 },
      { id: 'point', head: 'single point' },
      { id: 'how', head: 'how it fails', printed: false },
      { id: 'id', head: 'id', kind: 'label', printed: false },
    ],
    rows: plan.blackouts.flatMap((entry) =>
      [{ fails: entry.fails, how: entry.how }, ...(entry.also ?? [])].flatMap((failure) => {
        const what = failureWords(index, failure);
        const isPoint = (of: string): boolean => points.has(`${of} ${entry.how} ${entry.fails}`);
        const rows = entry.loses.map(({ reading, instance, at, perhaps }) => [
          what,
          readingName({ reading, instance }),
          index.kit.get(at)?.name ?? at,
          perhaps === true ? 'perhaps' : 'yes',
          isPoint(reading) ? reading : undefined,
          failure.how,
          failure.fails,
        ]);
        const radio = isPoint('radio')
          ? [[what, undefined, undefined, 'yes', 'radio', failure.how, failure.fails]]
          : [];
        const all = [...rows, ...radio];
        return all.length > 0 ? all : [[what, 'nothing', undefined, undefined, undefined, failure.how, failure.fails]];
      }),
    ),
    empty: 'Nothing that can fail takes a reading off a screen.',
  };
};
