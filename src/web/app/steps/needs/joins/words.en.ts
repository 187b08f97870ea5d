/** What the app says of joins and of keeping old kit, in English. */
export const en = {
  takeIn: 'take it into the file',
  joined: (says: string) => `${says}.`,
  neverThis: 'never this',
  notSo: (says: string) => `Not so: ${says}.`,
  proposed: 'Joins the plan proposes',
  noneProposed: 'None would help with the ports that are free.',
  takeAll: 'take all of them into the file',
  allTaken: 'Take all proposed joins into the file.',
  compared: (done: number, count: string) => `${done} of ${count} ways compared.`,
  nothingToCompare: 'No old unit stays that something could replace: there is nothing to compare.',
  stopped: (done: number, count: string) => `Stopped after ${done} of ${count}.`,
  failed: 'The comparison broke down; the boat and her plan are as they were.',
  oldKit: 'Old kit: kept or replaced',
  oldKitSays:
    'What it comes to when old units stay behind converters and when others take their place: units, cable and tees, each way wired at least cost.',
  stop: 'stop comparing',
  compare: 'compare them',
  compareAgain: 'compare again',
  compareOld: 'compare keeping and replacing old kit',
  compareFoundBy: ['wirings', 'options', 'converter', 'keep or replace'],
} as const;
