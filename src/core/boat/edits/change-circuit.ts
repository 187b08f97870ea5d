import * as z from 'zod';
import { idSchema } from '../ids.ts';
import { circuitSchema } from '../supply.ts';
import { defineEdit } from './define-edit.ts';
import { findInBoat } from './find-in-boat.ts';

const { name, ratingA, kind, feeds, interruptA, fusedEach, laid } = circuitSchema.shape;

/** Changes what is said of a circuit; what is left out stays. What it feeds from now on, no other circuit feeds. */
export const changeCircuit = defineEdit({
  id: 'change-circuit',
  params: z.strictObject({
    panel: idSchema,
    circuit: idSchema,
    name,
    ratingA: z.exactOptional(ratingA),
    kind: z.exactOptional(kind),
    feeds: z.exactOptional(feeds),
    interruptA,
    fusedEach,
    laid,
  }),
  title: ({ panel, circuit, name: called, ratingA: amps, kind: device, feeds: fed }) => {
    const facts = [
      ...(called === undefined ? [] : [`called ${called}`]),
      ...(amps === undefined ? [] : [`${amps} A`]),
      ...(device === undefined ? [] : [device.replace('-', ' ')]),
      ...(fed === undefined ? [] : [fed.length === 0 ? 'feeds nothing' : `feeds ${fed.join(', ')}`]),
    ];
    return `Circuit ${circuit} of panel ${panel}${facts.length === 0 ? ' is looked at anew' : `: ${facts.join(', ')}`}.`;
  },
  change: (boat, { panel, circuit, ...wanted }) => {
    const found = findInBoat(findInBoat(boat.supply.panels, panel, 'panel').circuits, circuit, 'circuit');
    const taken = new Set(wanted.feeds?.filter((one) => !found.feeds.includes(one)));
    for (const { circuits } of boat.supply.panels) {
      for (const other of circuits) if (other !== found) other.feeds = other.feeds.filter((one) => !taken.has(one));
    }
    Object.assign(found, wanted);
  },
});
