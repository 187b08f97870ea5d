import { indexBoat } from '../../boat/boat-index.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { EditParams } from '../../boat/edits/index.ts';
import type { Plan } from '../../plan-shape.ts';
import { identitiesHeard, takeOver } from './identities-heard.ts';
import { seeBus } from './see-bus.ts';
import type { Watched } from './watched.ts';

/** The edit that takes over from all that was watched who the units aboard are; undefined where the boat file says it all. */
export const takeOverWatched = (
  { boat, plan }: { boat: Boat; plan: Plan },
  all: readonly Watched[],
): EditParams<'take-identities'> | undefined => {
  const planned = { index: indexBoat(boat), plan };
  const heard = all.flatMap((watched) =>
    watched.wires.flatMap((wire) => {
      if (wire.kind !== 'bus') return [];
      const { id, senders } = seeBus(planned, wire, watched);
      return identitiesHeard(planned, id, { senders, durationS: wire.survey.time?.durationS });
    }),
  );
  // A bridge is on two buses, and has a NAME on each: the boat file keeps the first.
  return takeOver(heard.filter(({ unit }, at) => heard.findIndex((other) => other.unit === unit) === at));
};
