import * as z from 'zod';
import { measuresSchema } from '../measures.ts';
import { defineEdit } from './define-edit.ts';
import { fewInWords } from './few-in-words.ts';
import { withoutEmptyLists } from './leave-measures.ts';

const { airDraftParts, wavesM, doubtM, overheadM } = measuresSchema.shape;

const names = {
  airDraftParts: 'parts of the air draft',
  wavesM: 'allowance for waves and squat',
  doubtM: 'allowance for doubt',
  overheadM: 'margin above the mast',
} as const;

const isName = (name: string): name is keyof typeof names => Object.hasOwn(names, name);

/** Says the boat’s own measures that settings are computed from: what is left out stays, what is in `forget` is no longer said. */
export const setMeasures = defineEdit({
  id: 'set-measures',
  params: z.strictObject({
    airDraftParts,
    wavesM,
    doubtM,
    overheadM,
    forget: z.exactOptional(z.array(z.enum(['airDraftParts', 'wavesM', 'doubtM', 'overheadM'])).min(1)),
  }),
  title: ({ forget = [], ...said }) => {
    const all = [...Object.keys(said).filter(isName), ...forget].map((name) => names[name]);
    return `Measures: ${all.length === 0 ? 'nothing said' : fewInWords(all)}.`;
  },
  change: (boat, { forget = [], ...said }) => {
    const after = { ...boat.measures, ...said };
    for (const name of forget) delete after[name];
    boat.measures = after;
    withoutEmptyLists(boat, 'measures');
  },
});
