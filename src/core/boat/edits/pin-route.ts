import * as z from 'zod';
import { pinsSchema } from '../boat-schema.ts';
import { lineIdSchema } from '../ids.ts';
import { defineEdit } from './define-edit.ts';

const routePin = pinsSchema.shape.routes.unwrap().valueType;

const stateWords = { fixed: 'is settled', bought: 'is bought for its route', fitted: 'lies in its route' } as const;

/** Settles the ways a line takes, from either end to the other. */
export const pinRoute = defineEdit({
  id: 'pin-route',
  params: z.strictObject({ line: lineIdSchema, ...routePin.shape }),
  title: ({ line, state }) => `${line} ${stateWords[state]}.`,
  change: (boat, { line, ways, state }) => {
    boat.pins = { ...boat.pins, routes: { ...boat.pins?.routes, [line]: { ways, state } } };
  },
});
