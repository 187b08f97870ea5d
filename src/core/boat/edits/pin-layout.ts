import * as z from 'zod';
import { pinsSchema } from '../boat-schema.ts';
import { idSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

const layoutPin = pinsSchema.shape.layouts.unwrap().valueType;

const stateWords = {
  fixed: 'stays as it is laid out',
  bought: 'is bought as laid out',
  fitted: 'lies as laid out',
} as const;

/** Settles the trunk of a bus with its tees, so that no plan lays it otherwise. */
export const pinLayout = defineEdit({
  id: 'pin-layout',
  params: z.strictObject({ bus: idSchema, ...layoutPin.shape }),
  title: ({ bus, state }, boat) => `${nameInBoat(boat.buses, bus)} ${stateWords[state]}.`,
  change: (boat, { bus, ...layout }) => {
    findInBoat(boat.buses, bus, 'bus');
    boat.pins = { ...boat.pins, layouts: { ...boat.pins?.layouts, [bus]: layout } };
  },
});
