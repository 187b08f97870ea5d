import { taped } from '../../base.ts';
import { withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';
import { asRead, withSecondSheet } from './own-sheets.ts';

/** Two depth sensors with a number each, and a screen that is to show depth, whichever. */
export const readingsSeveralForOneNeed: Fault = {
  rule: 'readings/several-for-one-need',
  about: ['depth-bow', 'depth-keel', 'depth-screen'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'depth-bus',
      name: 'Depth bus',
      sheet: asRead('depth-sheet', 'Depth sensor, as its manual has it', { sends: [{ pgn: 128267 }] }),
      kit: [
        ...['keel', 'bow'].map((where, instance) => ({
          id: `depth-${where}`,
          name: `depth sensor at the ${where}`,
          place: 'aft-cabin',
          tail: taped(0.3),
          instances: [{ port: 'n2k', reading: 'depth' as const, instance }],
        })),
        { id: 'depth-screen', name: 'depth display', place: 'aft-cabin', tail: taped(0.3) },
      ],
      walk: [{ place: 'aft-cabin', tees: ['depth-keel.n2k', 'depth-bow.n2k', 'depth-screen.n2k', 'feed'] }],
    });
    return withSecondSheet(
      { ...boat, needs: [...boat.needs, { reading: 'depth', at: 'depth-screen', must: false }] },
      'depth-screen',
      asRead('depth-screen-sheet', 'Screen for depth, as its manual has it', { hears: [{ pgn: 128267 }] }),
    );
  },
};
