import * as z from 'zod';
import { shipPapersSchema } from '../ship-papers.ts';
import { defineEdit } from './define-edit.ts';
import { fewInWords } from './few-in-words.ts';
import { withoutEmptyLists } from './leave-measures.ts';

const { flag, goesAbroad, workBy, shipName, callSign, number } = shipPapersSchema.shape;

const names = {
  flag: 'flag state',
  goesAbroad: 'whether she goes abroad',
  workBy: 'who fits the radios',
  shipName: 'name in the AIS',
  callSign: 'call sign',
  number: 'ship’s number',
} as const;
const nameIds = ['flag', 'goesAbroad', 'workBy', 'shipName', 'callSign', 'number'] as const;

const isName = (name: string): name is keyof typeof names => Object.hasOwn(names, name);

/**
 * Says what the law asks for around her radios: what is left out stays, what is in `forget` is no longer said. Numbers stand in no
 * title: they are nobody else’s.
 */
export const setPapers = defineEdit({
  id: 'set-papers',
  params: z.strictObject({
    flag,
    goesAbroad,
    workBy,
    shipName,
    callSign,
    number,
    forget: z.exactOptional(z.array(z.enum(nameIds)).min(1)),
  }),
  title: ({ forget = [], ...said }) => {
    const all = [...Object.keys(said).filter(isName), ...forget].map((name) => names[name]);
    return `Papers: ${all.length === 0 ? 'nothing said' : fewInWords(all)}.`;
  },
  change: (boat, { forget = [], ...said }) => {
    const after = { ...boat.papers, ...said };
    for (const name of forget) delete after[name];
    boat.papers = after;
    withoutEmptyLists(boat, 'papers');
  },
});
