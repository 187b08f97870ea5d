import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { genderSchema, plugSchema } from '../sheet.ts';
import { applyChanges } from '../sheet-changes.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

const colourSchema = z.strictObject({
  label: z.string().min(1).max(40),
  colour: z.string().min(1).max(40),
});

/** Says what one plug of a unit is in truth, and the colours of its wires, as seen aboard: for this unit, whatever its sheet says. */
export const seePlug = defineEdit({
  id: 'see-plug',
  params: z.strictObject({
    unit: idSchema,
    plug: idSchema,
    connector: z.exactOptional(plugSchema.shape.connector),
    gender: z.exactOptional(genderSchema),
    /** by the label of the wire */
    colours: z.exactOptional(z.array(colourSchema).min(1).max(100)),
  }),
  title: ({ unit, plug, connector, gender, colours = [] }, boat) => {
    const facts = [
      ...(connector === undefined ? [] : [connector]),
      ...(gender === undefined || gender === 'none' ? [] : [gender]),
      ...colours.map(({ label, colour }) => `${label} ${colour}`),
    ];
    return `Plug ${plug} of ${nameInBoat(boat.kit, unit)}${facts.length === 0 ? '' : `: ${facts.join(', ')}`}, seen.`;
  },
  change: (boat, { unit: id, plug: plugId, connector, gender, colours }) => {
    const unit = findInBoat(boat.kit, id, 'unit');
    const sheet = applyChanges(findInBoat(boat.sheets, unit.sheet, 'sheet'), unit.changes ?? []);
    const { conductors = [] } = findInBoat(sheet.plugs, plugId, 'plug');
    const seen = new Map((colours ?? []).map(({ label, colour }) => [label, colour]));
    const recoloured = conductors.map((wire) => ({ ...wire, colour: seen.get(wire.label) ?? wire.colour }));
    const path = `plugs.${plugId}`;
    const said = [
      ...(connector === undefined ? [] : [{ path: `${path}.connector`, value: connector }]),
      ...(gender === undefined ? [] : [{ path: `${path}.gender`, value: gender }]),
      ...(colours === undefined || conductors.length === 0 ? [] : [{ path: `${path}.conductors`, value: recoloured }]),
    ].map((change) => ({ ...change, how: 'seen' as const }));
    if (said.length === 0) return;
    const paths = new Set(said.map((change) => change.path));
    unit.changes = [...(unit.changes ?? []).filter((change) => !paths.has(change.path)), ...said];
  },
});
