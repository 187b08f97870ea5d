import * as z from 'zod';
import { idSchema } from './ids.ts';

/** Whether what comes in by wifi, by the network or from ashore can be written on to the boat’s buses and lines. */
export const writesSchema = z.enum(['listen-only', 'may-write', 'unknown']);
export type Writes = z.infer<typeof writesSchema>;

/** Who can hold a password: roles only, so that no password and no name of a person can stand in the file. */
export const holders = ['charter-guest', 'crew', 'fitter', 'owner', 'skipper', 'yard'] as const;
export const holderSchema = z.enum(holders);

/** What a person knows of the remote side of one unit; what is left out is not known. */
export const kitRemoteSchema = z
  .strictObject({
    writes: z.exactOptional(writesSchema),
    /** somebody needs it to write: a route from a phone, a recorder that sets the time */
    mustWrite: z.exactOptional(z.boolean()),
    /** how its password stands, never the password */
    password: z.exactOptional(z.enum(['changed', 'default', 'none', 'unknown'])),
    heldBy: z.exactOptional(z.array(holderSchema).min(1)),
    /** gives addresses to the units of its network */
    givesAddresses: z.exactOptional(z.boolean()),
    /** its wifi port that guests are let on to */
    guests: z.exactOptional(idSchema),
  })
  .meta({ id: 'KitRemote' });
export type KitRemote = z.infer<typeof kitRemoteSchema>;

/** What its maker says of the remote side of a kind of unit. */
export const sheetRemoteSchema = z
  .strictObject({
    writes: z.exactOptional(writesSchema.exclude(['unknown'])),
    givesAddresses: z.exactOptional(z.boolean()),
  })
  .meta({ id: 'SheetRemote' });
