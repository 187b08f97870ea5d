/** What the step Boat says of what was found aboard and stands in the log, in English. */
export const en = {
  heading: (count: number) => `Found aboard, not in the file (${count})`,
  about:
    'Written into the log by a phone, or here. What you take over comes into the boat as a step that can be undone; what you leave stays in the log.',
  all: (count: number) => (count === 1 ? 'Take it over' : `Take all ${count} over`),
  allTitle: (count: number) => `Take over what was found aboard: ${count} ${count === 1 ? 'entry' : 'entries'}.`,
  take: 'take over',
  leave: 'leave it',
  seenTo: 'seen to',
  of: (what: string) => `: ${what}`,
  byHand: 'To be changed by hand: in the tables of this step, or on the drawing.',
  signed: (at: string, by: string | undefined) => (by === undefined ? at : `${at}, ${by}`),
  noPicture: 'Its picture has not come yet, or is not in the folder beside the boat file.',
  commandSays: 'take over what was found aboard',
  foundBy: ['phone', 'survey', 'found', 'take over', 'measure', 'serial', 'photo'],
} as const;
