import { type Boat, boatSchema } from './boat-schema.ts';
import { inSchemaOrder } from './in-schema-order.ts';

/**
 * The text of a boat file: names in the order of the schema, lists in their own order, two spaces a level, a line end last.
 * Equal boats give equal bytes, and readBoat gives the boat back.
 */
export const writeBoat = (boat: Boat): string => `${JSON.stringify(inSchemaOrder(boatSchema, boat), null, 2)}\n`;
