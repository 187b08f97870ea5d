import type { Rule } from '../rule.ts';

/** A sheet that claims the maker's manual must say which page, or nobody can check it later. */
export const manualWithoutNote: Rule = {
  id: 'provenance/manual-without-note',
  level: 'doubt',
  title: 'A sheet said to come from the manual does not say where in it.',
  sources: ['project-provenance'],
  check: ({ index }) =>
    index.boat.sheets
      .filter((sheet) => sheet.source === 'manual' && sheet.sourceNote === undefined)
      .map((sheet) => ({
        about: [sheet.id],
        says: `The sheet "${sheet.name}" is marked as taken from the manual, but not from which one and which page; nobody can check it later.`,
        cure: 'Note the manual and the page in the sheet.',
      })),
};
