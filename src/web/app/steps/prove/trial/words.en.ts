/** What the sea trial and the round with the crew say in the step Prove, in English. */
export const en = {
  heading: (done: number, count: number) => `Sea trial: ${done} of ${count}`,
  about: 'In this order, as each feeds the next. What a calculator finds goes into the settings at once.',
  none: 'Nothing aboard is to be tried at sea.',
  expected: (what: string) => `Expected: ${what}`,
  right: 'as it should be',
  wrong: 'not right',
  answers: (answer: string, what: string) => `${answer}: ${what}`,
  calculator: 'Open its calculator at the step Fit',
  caution: 'Open water, a lookout beside whoever reads a screen, and the old way of steering at hand.',
  crew: {
    heading: 'Shown to the crew',
    about: 'Before the first passage everybody does each of these once with their own hand. Ticked by name.',
    name: 'name',
    add: 'tick for this person',
    nobody: 'Write a name first; then each thing can be ticked for it.',
    shown: (people: string) => `Shown to ${people}`,
    notYet: 'shown to nobody yet',
    tick: (item: string, person: string) => `${person}: ${item}`,
  },
} as const;
