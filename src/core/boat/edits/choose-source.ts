import { chosenSourceSchema, isSameChoice } from '../chosen-source.ts';
import { defineEdit } from './define-edit.ts';

/** Says which port a reading is to come from, at one unit or all over the boat, in place of what was chosen there before. */
export const chooseSource = defineEdit({
  id: 'choose-source',
  params: chosenSourceSchema,
  title: ({ reading, instance, at, primary }) =>
    `Take ${reading}${instance === undefined ? '' : ` ${instance}`}${at === undefined ? '' : ` at ${at}`} from ${primary}.`,
  change: (boat, choice) => {
    boat.sources = [...(boat.sources ?? []).filter((entry) => !isSameChoice(entry, choice)), choice];
  },
});
