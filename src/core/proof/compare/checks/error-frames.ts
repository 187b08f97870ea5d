import type { Check } from '../check.ts';
import { counted, figure } from '../say.ts';

/** Faults on the bus that the recorder noted. */
export const errorFrames: Check = {
  id: 'error-frames',
  title: 'The recorder noted faults on the bus.',
  level: 'fault',
  sources: ['pgn-database'],
  find: ({ buses }) =>
    buses
      .filter(({ wire }) => wire.errorFrames > 0)
      .map(({ id, wire }) => ({
        about: [id],
        says: `The recorder noted ${counted(wire.errorFrames, 'fault')} among ${wire.count} frames (${figure((100 * wire.errorFrames) / wire.count)} %); a sound bus has none.`,
        cure: 'Measure the bus with the power off: 60 Ω between the data wires, neither wire to shield. Then look for a wet plug, a third end resistor, a drop that is too long.',
      })),
};
