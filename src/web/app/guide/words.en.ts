/** What the app says round the guide, in English. The guide itself stands in docs/guide. */
export const en = {
  guide: 'guide',
  name: 'Guide',
  openSays: 'open the guide',
  openAt: (step: string) => `open the guide at ${step}`,
  foundBy: ['help', 'manual', 'how', 'documentation', 'learn', 'first', 'explain'],
  contents: 'contents',
  close: 'close',
  printPage: 'print this page',
  printWhole: 'print the whole guide',
  gathering: 'Gathering the pages …',
  noPage: 'There is no such page in the guide.',
  hintsAgain: 'show the hints again',
} as const;
