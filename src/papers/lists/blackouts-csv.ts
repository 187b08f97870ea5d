import { failureWords } from '../../core/blackouts/failure-words.ts';
import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { csvText } from './csv.ts';

const header = ['what fails', 'reading', 'goes off', 'for certain', 'single point', 'how it fails', 'id'] as const;

/** The blackout table as CSV: a row for each reading that a failure takes off a screen, and one for a failure that takes none. */
export const blackoutsCsv = (boat: Boat, plan: Plan): string => {
  const index = indexBoat(boat);
  const points = new Set(
    plan.vitals.flatMap(({ of, points: own }) => own.map(({ fails, how }) => `${of} ${how} ${fails}`)),
  );
  return csvText([
    header,
    ...plan.blackouts.flatMap((entry) =>
      [{ fails: entry.fails, how: entry.how }, ...(entry.also ?? [])].flatMap((failure) => {
        const what = failureWords(index, failure);
        const isPoint = (of: string): boolean => points.has(`${of} ${entry.how} ${entry.fails}`);
        const rows = entry.loses.map(({ reading, instance, at, perhaps }) => [
          what,
          readingName({ reading, instance }),
          index.kit.get(at)?.name ?? at,
          perhaps === true ? 'perhaps' : 'yes',
          isPoint(reading) ? reading : '',
          failure.how,
          failure.fails,
        ]);
        const radio = isPoint('radio') ? [[what, '', '', 'yes', 'radio', failure.how, failure.fails]] : [];
        const all = [...rows, ...radio];
        return all.length > 0 ? all : [[what, 'nothing', '', '', '', failure.how, failure.fails]];
      }),
    ),
  ]);
};
