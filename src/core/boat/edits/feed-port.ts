import * as z from 'zod';
import { dottedIdSchema, splitDotted } from '../ids.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';
import { nameInBoat } from './name-in-boat.ts';

/** Feeds a supply port of a unit from a circuit, and from no other. */
export const feedPort = defineEdit({
  id: 'feed-port',
  params: z.strictObject({ port: dottedIdSchema, circuit: dottedIdSchema }),
  title: ({ port, circuit }, boat) => {
    const { kit: panel, part } = splitDotted(circuit);
    return `Feed ${nameInBoat(boat.kit, splitDotted(port).kit)} from circuit ${part} of panel ${panel}.`;
  },
  change: (boat, { port, circuit: dotted }) => {
    const { kit, part } = splitDotted(dotted);
    const circuit = findInBoat(findInBoat(boat.supply.panels, kit, 'panel').circuits, part, 'circuit');
    for (const panel of boat.supply.panels)
      for (const one of panel.circuits) {
        const at = one.feeds.indexOf(port);
        if (at >= 0) one.feeds.splice(at, 1);
      }
    circuit.feeds.push(port);
  },
});
