/** What the lines of a form say, in English. */
export const en = {
  notKnown: 'not known',
  yes: 'yes',
  no: 'no',
  howOf: (label: string) => `${label}: known`,
  hows: { papers: 'from papers', taped: 'by tape', guessed: 'guessed' },
  wrongLength: 'Write a length, for example 0.3 m or 1 ft.',
  wrongNumbers: 'Write numbers with a comma between them, for example 12, 24.',
  takeOut: 'take out',
} as const;
