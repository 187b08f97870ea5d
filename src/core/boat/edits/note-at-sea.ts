import * as z from 'zod';
import { bridgeSchema, leadTrialSchema, logTrialSchema, swingSchema, windTrialSchema } from '../at-sea.ts';
import { sortedBy } from '../sorted-by.ts';
import { defineEdit } from './define-edit.ts';
import { nameInBoat } from './name-in-boat.ts';

const trials = z.strictObject({
  log: z.exactOptional(logTrialSchema),
  wind: z.exactOptional(windTrialSchema),
  lead: z.exactOptional(leadTrialSchema),
  swing: z.exactOptional(swingSchema),
  bridge: z.exactOptional(bridgeSchema),
});

const withOne = <Entry extends { readonly id: string }>(list: readonly Entry[] = [], one: Entry): Entry[] =>
  sortedBy([...list.filter(({ id }) => id !== one.id), one], ({ id }) => [id]);

/** Notes what was measured at sea with one of the calculators, in place of what had its id. */
export const noteAtSea = defineEdit({
  id: 'note-at-sea',
  params: trials.refine((given) => Object.keys(given).length === 1, { message: 'Note one trial at a time.' }),
  title: ({ log, wind, lead, swing, bridge }, boat) => {
    const of = (unit: string): string => nameInBoat(boat.kit, unit);
    if (log !== undefined) return `Log run of ${of(log.unit)}.`;
    if (wind !== undefined) return `Wind on both tacks, ${of(wind.unit)}.`;
    if (lead !== undefined) return `Lead line at ${of(lead.unit)}.`;
    if (swing !== undefined) return `Swing of ${of(swing.unit)}, electronics ${swing.electronics}.`;
    return `The bridge ${bridge?.name ?? ''}.`;
  },
  change: (boat, { log, wind, lead, swing, bridge }) => {
    const before = boat.sea ?? {};
    boat.sea = {
      ...before,
      ...(log === undefined ? {} : { logs: withOne(before.logs, log) }),
      ...(wind === undefined ? {} : { winds: withOne(before.winds, wind) }),
      ...(lead === undefined ? {} : { leads: withOne(before.leads, lead) }),
      ...(swing === undefined ? {} : { swings: withOne(before.swings, swing) }),
      ...(bridge === undefined ? {} : { bridges: withOne(before.bridges, bridge) }),
    };
  },
});
