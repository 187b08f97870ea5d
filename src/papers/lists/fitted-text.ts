import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { type FoundSubject, foundSubjects } from './found-subjects.ts';
import { keepUnits } from './print-figure.ts';

const width = 80;

const rowOf = (says: string, id: string): string[] => [
  ...textLines(keepUnits(says), { width, lead: '- ' }),
  `    [${id}]`,
];

const groupOf = (title: string, rows: readonly FoundSubject[]): string[] =>
  rows.length === 0 ? [] : ['', title, ...rows.flatMap(({ says, id }) => rowOf(says, id))];

/** What came out otherwise than planned so far, and everything that could, each with the id by which it is noted or taken back. */
export const fittedText = (boat: Boat, plan: Pick<Plan, 'lines' | 'feeds'>): string => {
  const { units, lines, circuits, places } = foundSubjects(boat, plan);
  const names = new Map([...units, ...lines, ...circuits, ...places].map(({ id, says }) => [id, says]));
  const noted = (boat.fitted ?? []).map(({ id, about, was, is, on, by, note }) => {
    const difference = `${names.get(about) ?? about}: ${was === undefined ? is : `was ${was}, is ${is}`}`;
    return { id, says: [difference, on, by, note].filter((part) => part !== undefined).join(', ') };
  });
  return [
    noted.length === 0 ? 'Nothing is noted that came out otherwise than planned.' : 'Otherwise than planned:',
    ...noted.flatMap(({ says, id }) => rowOf(says, id)),
    ...groupOf('UNITS', units),
    ...groupOf('LINES', lines),
    ...groupOf('CIRCUITS', circuits),
    ...groupOf('PLACES', places),
  ]
    .map((line) => `${line}\n`)
    .join('');
};
