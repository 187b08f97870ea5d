import * as z from 'zod';
import { underwaterSchema } from '../site.ts';
import { defineEdit } from './define-edit.ts';

/** Says where keel and propeller are and how long her waterline is, in place of all that was said; nothing forgets it. */
export const setUnderwater = defineEdit({
  id: 'set-underwater',
  params: z.strictObject({ underwater: z.exactOptional(underwaterSchema) }),
  title: ({ underwater }) =>
    underwater === undefined ? 'Nothing is known of her underwater body.' : 'Keel, propeller and waterline.',
  change: (boat, { underwater }) => {
    if (underwater === undefined) delete boat.hull.underwater;
    else boat.hull.underwater = underwater;
  },
});
