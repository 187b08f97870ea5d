import * as z from 'zod';
import { shipPapers } from '../../facts/ship-papers.ts';
import { paperworkSchema } from '../ship-papers.ts';
import { sortedBy } from '../sorted-by.ts';
import { defineEdit } from './define-edit.ts';
import { withoutEmptyLists } from './leave-measures.ts';

const stateWords = { asked: 'asked for', have: 'there', 'not-needed': 'not needed' } as const;

/** Notes where a paper stands; without `stands` nothing was done about it yet. */
export const notePaperwork = defineEdit({
  id: 'note-paperwork',
  params: z.strictObject({
    paper: paperworkSchema.shape.paper,
    stands: z.exactOptional(paperworkSchema.omit({ paper: true })),
  }),
  title: ({ paper, stands }) =>
    `The ${shipPapers[paper].name}: ${stands === undefined ? 'not started' : stateWords[stands.state]}.`,
  change: (boat, { paper, stands }) => {
    const others = (boat.papers?.paperwork ?? []).filter((entry) => entry.paper !== paper);
    const paperwork = [...others, ...(stands === undefined ? [] : [{ paper, ...stands }])];
    boat.papers = { ...boat.papers, paperwork: sortedBy(paperwork, (entry) => [entry.paper]) };
    withoutEmptyLists(boat, 'papers');
  },
});
