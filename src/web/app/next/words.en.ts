/** What the line over the course says of the next thing to do, in English. */
export const en = {
  next: 'What next',
  at: (step: string) => `At ${step}: `,
  firstPlan: 'Her first plan',
  part: {
    boat: 'hull and places',
    kit: 'what comes',
    needs: 'what must be seen',
    wires: 'wires',
    sound: 'no fault left',
  },
  partDone: (part: string) => `${part}: done`,
  partOpen: (part: string) => `${part}: still to do`,
  stands: 'Her first plan stands.',
  standsAt: { lines: 'see every line', buy: 'read the order', boat: 'what to measure next' },
  putAway: 'put away',
  andThen: (count: number) => (count === 1 ? 'then one more' : `then ${count} more`),
  far: (done: number, all: number) => `${done} of ${all} done`,
} as const;
