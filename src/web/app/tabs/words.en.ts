import { printCount } from '../../../papers/lists/print-figure.ts';
import type { NewerSeen } from '../../workers/protocol.ts';

const leftOutWords = ({ leftOut }: NewerSeen): string => {
  const count = leftOut.reduce((sum, part) => sum + part.count, 0);
  if (count === 0) return 'All of it can be shown.';
  const parts = leftOut.map((part) => part.part).join(', ');
  return `${printCount(count, 'entry', 'entries')} this program does not know ${count === 1 ? 'is' : 'are'} not shown (in ${parts}).`;
};

/** What the app says of a boat that cannot be changed in this tab, in English. */
export const en = {
  follows: 'Another tab works on this boat; this one follows it.',
  workHere: 'work here',
  workHereSays: 'Work on this boat in this tab',
  notHere: 'Not done: another tab works on this boat. Press “work here” to go on in this one.',
  looksAt: (when: string) => `This is how she was until ${when}. Nothing can be changed here.`,
  notThen: 'Not done: this is an earlier state, to look at. Go back to the boat as she is, or restore this one.',
  back: 'back to the boat as she is',
  restore: 'restore this state',
  newer: (seen: NewerSeen) =>
    `A newer Fairlead wrote this file, in version ${seen.version}. It is here to look at; nothing in it is changed. ${leftOutWords(seen)}`,
  notNewer: 'Not done: a newer Fairlead wrote this file, and this one changes nothing in it. Change it there.',
  loadAnew: 'load it anew',
  saveUnchanged: 'save a copy, unchanged',
} as const;
