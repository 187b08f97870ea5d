import * as z from 'zod';
import { aboardSchema, settingSchema } from '../aboard.ts';
import { idSchema } from '../ids.ts';
import { sortedBy } from '../sorted-by.ts';
import { defineEdit } from './define-edit.ts';
import { fewInWords } from './few-in-words.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

const { serial, software, copied } = aboardSchema.shape;
const notedSchema = settingSchema.extend({ value: z.exactOptional(settingSchema.shape.value) });

const forgotten = { serial: 'serial number', software: 'software', copied: 'whether all is copied' } as const;

/**
 * Notes what is read off a unit aboard: its serial number, its software, what is set in it. What is left out stays; a setting without
 * value, and what is in `forget`, is no longer said. Values stand in no title: some are nobody else’s.
 */
export const noteAboard = defineEdit({
  id: 'note-aboard',
  params: z.strictObject({
    unit: idSchema,
    serial,
    software,
    settings: z.exactOptional(z.array(notedSchema).min(1).max(200)),
    copied,
    forget: z.exactOptional(z.array(z.enum(['serial', 'software', 'copied'])).min(1)),
  }),
  title: ({ unit, settings = [], forget = [], ...said }, boat) => {
    const noted = [
      ...(said.serial === undefined ? [] : ['serial number']),
      ...(said.software === undefined ? [] : ['software']),
      ...settings.flatMap(({ name, value }) => (value === undefined ? [] : [name])),
    ];
    const gone = [
      ...settings.flatMap(({ name, value }) => (value === undefined ? [name] : [])),
      ...forget.map((field) => forgotten[field]),
    ];
    const facts = [
      ...(noted.length === 0 ? [] : [`${fewInWords(noted)} noted`]),
      ...(gone.length === 0 ? [] : [`${fewInWords(gone)} not noted`]),
      ...(said.copied === undefined ? [] : [said.copied ? 'all that is set in it is copied' : 'not all is copied yet']),
    ];
    return `${nameInBoat(boat.kit, unit)}: ${facts.length === 0 ? 'nothing noted' : facts.join(', ')}.`;
  },
  change: (boat, { unit: id, settings = [], forget = [], ...said }) => {
    const unit = findInBoat(boat.kit, id, 'unit');
    const values = new Map((unit.aboard?.settings ?? []).map(({ name, value }) => [name, value]));
    for (const { name, value } of settings) {
      if (value === undefined) values.delete(name);
      else values.set(name, value);
    }
    const { settings: _, ...before } = unit.aboard ?? {};
    const kept = sortedBy(
      [...values].map(([name, value]) => ({ name, value })),
      ({ name }) => [name],
    );
    const after = { ...before, ...said, ...(kept.length === 0 ? {} : { settings: kept }) };
    for (const field of forget) delete after[field];
    if (Object.keys(after).length > 0) unit.aboard = after;
    else delete unit.aboard;
  },
});
