import * as z from 'zod';
import { dottedIdSchema, splitDotted } from '../ids.ts';
import { ratePath } from '../rate-path.ts';
import { sendsSchema } from '../sheet.ts';
import { namesOf } from '../sheet-changes.ts';
import { UserError } from '../user-error.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

const { pgn, sentence, everyMs } = sendsSchema.shape;

/** Sets how often one unit sends a message at one of its ports; without `everyMs` what its sheet says counts again. */
export const setRate = defineEdit({
  id: 'set-rate',
  params: z.strictObject({
    port: dottedIdSchema,
    /** number of a PGN, or the letters of a sentence */
    message: z.union([pgn.unwrap(), sentence.unwrap()]),
    everyMs,
  }),
  title: ({ port, message, everyMs: ms }) =>
    ms === undefined
      ? `${port} sends ${message} as often as its sheet says.`
      : `${port} sends ${message} every ${ms} ms.`,
  change: (boat, { port: dotted, message, everyMs: value }) => {
    const { kit, part: port } = splitDotted(dotted);
    const unit = findInBoat(boat.kit, kit, 'unit');
    const sheet = findInBoat(boat.sheets, unit.sheet, 'sheet');
    const sends = sheet.ports.find(({ id }) => id === port)?.sends ?? [];
    // a path leads to the first of them only
    if (sends.filter((entry) => namesOf(entry).includes(String(message))).length > 1) {
      throw new UserError({
        says: `${dotted} sends ${message} several times, for different numbers.`,
        whatToDo: 'Give the list of what it sends whole, in the changes of the unit or in its sheet.',
      });
    }
    const path = ratePath(port, message);
    const others = (unit.changes ?? []).filter((change) => change.path !== path);
    if (value !== undefined) unit.changes = [...others, { path, value, how: 'seen' }];
    else if (others.length === 0) delete unit.changes;
    else unit.changes = others;
  },
});
