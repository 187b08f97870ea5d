import { chosenSourceSchema, isSameChoice } from '../chosen-source.ts';
import { UserError } from '../user-error.ts';
import { defineEdit } from './define-edit.ts';

/** Takes a chosen source back, so that the plan proposes one again. */
export const letSourceGo = defineEdit({
  id: 'let-source-go',
  params: chosenSourceSchema.omit({ primary: true }),
  title: ({ reading, instance, at }) =>
    `Let the plan propose the source of ${reading}${instance === undefined ? '' : ` ${instance}`}${at === undefined ? '' : ` at ${at}`}.`,
  change: (boat, which) => {
    const left = (boat.sources ?? []).filter((entry) => !isSameChoice(entry, which));
    if (left.length === (boat.sources ?? []).length) {
      throw new UserError({
        says: `No source of ${which.reading} is chosen there.`,
        whatToDo: 'Take back one of the choices that stand.',
      });
    }
    if (left.length === 0) delete boat.sources;
    else boat.sources = left;
  },
});
