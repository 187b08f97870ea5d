import { needSchema } from '../boat-schema.ts';
import { UserError } from '../user-error.ts';
import { defineEdit } from './define-edit.ts';
import { isSameNeed, needInWords } from './same-need.ts';

/** Puts other wishes on a need: how often, which reference, with the offset, and whether it must be met. */
export const changeNeed = defineEdit({
  id: 'change-need',
  params: needSchema,
  title: ({ reference, everyMs, ...need }) =>
    `Want ${needInWords(need)}${reference === undefined ? '' : ` as ${reference}`}${everyMs === undefined ? '' : ` every ${everyMs} ms`}.`,
  change: (boat, need) => {
    const at = boat.needs.findIndex((entry) => isSameNeed(entry, need));
    if (at < 0)
      throw new UserError({
        says: `The boat does not want ${needInWords(need)}.`,
        whatToDo: 'Choose one of its needs, or add it.',
      });
    boat.needs[at] = need;
  },
});
