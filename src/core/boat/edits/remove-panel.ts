import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { UserError } from '../user-error.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { leaveWork } from './leave-work.ts';
import { withoutPhotos } from './without-photos.ts';

/** Takes a panel out with its circuits; refused while another is fed from it. */
export const removePanel = defineEdit({
  id: 'remove-panel',
  params: z.strictObject({ panel: idSchema }),
  title: ({ panel }) => `Take panel ${panel} out.`,
  change: (boat, { panel }) => {
    findInBoat(boat.supply.panels, panel, 'panel');
    const fed = boat.supply.panels.find(({ from }) => from === panel);
    if (fed !== undefined) {
      throw new UserError({
        says: `Panel ${fed.id} is fed from panel ${panel}.`,
        whatToDo: `Feed ${fed.id} from a bank or another panel first.`,
      });
    }
    boat.supply.panels = boat.supply.panels.filter(({ id }) => id !== panel);
    for (const { circuits } of boat.supply.panels)
      for (const circuit of circuits) circuit.feeds = circuit.feeds.filter((one) => one !== panel);
    for (const key of Object.keys(boat.pins?.fuses ?? {}))
      if (key.startsWith(`${panel}.`)) delete boat.pins?.fuses?.[key];
    withoutPhotos(boat, (of) => of === panel);
    leaveWork(boat, (id) => id === panel || id.startsWith(`${panel}.`));
  },
});
