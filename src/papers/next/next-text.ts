import { textLines } from '../../core/units/text-lines.ts';
import { keepUnits } from '../lists/print-figure.ts';
import { atTerminal } from './at-terminal.ts';
import type { NextAsked, NextThing } from './next-thing.ts';
import { nextThings } from './next-things.ts';
import { nothingNext } from './nothing-next.ts';

const width = 80;

/** As many things as a person looks ahead, the next one with them. */
const mostTold = 5;

const linesOf = ({ id, step, does, why }: NextThing, at: number, file: string): string[] => {
  const lead = `${at + 1}. `;
  const under = ' '.repeat(lead.length);
  const name = `${step.slice(0, 1).toUpperCase()}${step.slice(1)}`;
  const command = atTerminal(id, file);
  return [
    ...textLines(keepUnits(`At ${name}: ${does}`), { width, lead }),
    ...(at === 0 ? textLines(keepUnits(why), { width, lead: under }) : []),
    // a command is copied whole, however long the name of the file is
    ...(command === undefined ? [] : [`${under}${command}`]),
  ];
};

/** What is to be done at a boat, for a terminal: the same things as on the page, each with what is typed for it; `file` names the boat file. */
export const nextText = (asked: NextAsked, file: string): string[] => {
  const things = nextThings(asked);
  const left = things.length - mostTold;
  return [
    'WHAT NEXT',
    ...(things.length === 0 ? [nothingNext] : []),
    ...things.slice(0, mostTold).flatMap((thing, at) => linesOf(thing, at, file)),
    ...(left > 0 ? [`Then ${left} more.`] : []),
  ];
};
