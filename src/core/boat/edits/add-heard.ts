import * as z from 'zod';
import { kitSchema } from '../boat-schema.ts';
import { freeId } from '../every-id.ts';
import { idSchema } from '../ids.ts';
import { sheetSchema } from '../sheet.ts';
import { defineEdit } from './define-edit.ts';

/** Puts aboard what a recording heard: each unit with a sheet of its own, all of them on one backbone, made where it is not there. */
export const addHeard = defineEdit({
  id: 'add-heard',
  params: z.strictObject({
    bus: idSchema,
    /** the port by which every one of the units is on the backbone */
    port: idSchema,
    sheets: z.array(sheetSchema),
    units: z.array(kitSchema).min(1),
  }),
  title: ({ units }) => `Put aboard what was heard: ${units.length} ${units.length === 1 ? 'unit' : 'units'}.`,
  change: (boat, { bus, port, sheets, units }) => {
    if (!boat.buses.some(({ id }) => id === bus))
      boat.buses.push({ id: bus, name: 'Navigation bus', protocol: 'nmea2000' });
    boat.sheets.push(...sheets);
    boat.kit.push(...units);
    const members = units.map(({ id }) => ({ kit: id, port, as: 'both' as const }));
    const joined = boat.joins.find((join) => join.hold === 'fixed' && join.bus === bus);
    if (joined === undefined)
      boat.joins.push({ id: freeId(boat, `${bus}-join`), kind: 'nmea2000', bus, members, hold: 'fixed' });
    else joined.members.push(...members);
  },
});
