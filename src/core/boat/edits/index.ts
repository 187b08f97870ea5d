import type * as z from 'zod';
import { acceptFinding } from './accept-finding.ts';
import { addNeed } from './add-need.ts';
import { moveUnit } from './move-unit.ts';
import { removeNeed } from './remove-need.ts';
import { removeUnit } from './remove-unit.ts';
import { reopenFinding } from './reopen-finding.ts';
import { setFate } from './set-fate.ts';
import { tapeLength } from './tape-length.ts';

/** Every edit by its id; menus, keys and buttons share this list. */
export const edits = {
  'accept-finding': acceptFinding,
  'add-need': addNeed,
  'move-unit': moveUnit,
  'remove-need': removeNeed,
  'remove-unit': removeUnit,
  'reopen-finding': reopenFinding,
  'set-fate': setFate,
  'tape-length': tapeLength,
} as const;

export type EditId = keyof typeof edits;

/** The parameters of one edit. */
export type EditParams<Id extends EditId> = z.infer<(typeof edits)[Id]['params']>;
