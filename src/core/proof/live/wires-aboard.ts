import type { Boat } from '../../boat/boat-schema.ts';
import { byCodeUnit } from '../../boat/ids.ts';
import type { Plan } from '../../plan-shape.ts';

/** The wires of a boat that can be listened to: her buses by id, and each line of sentences by the port that talks on it. */
export const wiresAboard = ({ buses }: Pick<Boat, 'buses'>, { traffic }: Pick<Plan, 'traffic'>): readonly string[] =>
  [...buses.map(({ id }) => id), ...traffic.lines.map(({ talker }) => talker)].sort(byCodeUnit);
