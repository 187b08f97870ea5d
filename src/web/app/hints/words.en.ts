/** The hints a newcomer is given once, in English. */
export const en = {
  hint: 'Hint',
  putAway: 'put away',
  putAwayThis: 'put this hint away',
  none: 'no more hints',
  again: 'show the hints again',
  againFoundBy: ['help', 'newcomer', 'first', 'guide', 'learn', 'tips'],
  says: {
    next: 'This line always says the next sensible thing to do at this boat. Press it, and the page goes there.',
    note: 'Press a note, and the drawing goes to what it speaks of. Rest on it, and the balloon of the same number lights.',
    sheet:
      'Drag the sheet to move it, scroll or pinch for larger and smaller. Press a balloon for all there is to say of that unit.',
    kit: 'Say it in your own words: hears ships, shows depth. A row can also be dragged by its dots onto the boat.',
    table: 'Tables open from the row below: there one types, copies and pastes many at once.',
    pull: 'Pull out a fuse, a tee or a cable on the drawing, and see what goes dark: the button is in the row below.',
    finder: 'Whatever can be done stands in one list: press the key / anywhere, and type what you want.',
  },
} as const;
