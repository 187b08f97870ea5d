import { taped } from '../../base.ts';
import { withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';
import { asRead, withSecondSheet } from './own-sheets.ts';

/** A bare heading sensor and a screen set to true, and nobody sends variation. */
export const readingsReferenceUnknown: Fault = {
  rule: 'readings/reference-unknown',
  about: ['bare-compass.n2k', 'true-screen'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'course-bus',
      name: 'Course bus',
      sheet: asRead('bare-compass-sheet', 'Heading sensor, as its manual has it', { sends: [{ pgn: 127250 }] }),
      kit: [
        { id: 'bare-compass', name: 'old heading sensor', place: 'aft-cabin', tail: taped(0.3) },
        { id: 'true-screen', name: 'course display', place: 'aft-cabin', tail: taped(0.3) },
      ],
      walk: [{ place: 'aft-cabin', tees: ['bare-compass.n2k', 'true-screen.n2k', 'feed'] }],
    });
    return withSecondSheet(
      { ...boat, needs: [...boat.needs, { reading: 'heading', at: 'true-screen', must: false, reference: 'true' }] },
      'true-screen',
      asRead('true-screen-sheet', 'Screen for heading, as its manual has it', { hears: [{ pgn: 127250 }] }),
    );
  },
};
