import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { kitRemoteSchema } from '../remote.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Says what is known of the wifi and network side of a unit, in place of all that was said of it; nothing forgets it. */
export const setRemote = defineEdit({
  id: 'set-remote',
  params: z.strictObject({ unit: idSchema, remote: z.exactOptional(kitRemoteSchema) }),
  title: ({ unit, remote }, boat) => {
    const name = nameInBoat(boat.kit, unit);
    if (remote === undefined) return `Nothing is known of the wifi of ${name}.`;
    return remote.writes === undefined ? `Wifi of ${name}.` : `Wifi of ${name}: ${remote.writes.replaceAll('-', ' ')}.`;
  },
  change: (boat, { unit, remote }) => {
    const found = findInBoat(boat.kit, unit, 'unit');
    if (remote === undefined) delete found.remote;
    else found.remote = remote;
  },
});
