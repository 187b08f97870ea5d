/** What the app says round its trade words, in English. */
export const en = {
  all: 'All trade words, explained',
  onDrawing: 'Words on the drawing',
  here: 'Words here:',
} as const;
