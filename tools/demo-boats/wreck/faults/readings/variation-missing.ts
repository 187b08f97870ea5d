import type { Fault } from '../../fault.ts';
import { atHelm, sentenceSheet, withPair } from '../../pair-units.ts';

const compass = sentenceSheet('course-talker', {
  name: 'Compass and receiver in one, as its manual has it',
  kind: 'instrument',
  ports: [{ id: 'out', role: 'talk', sends: [{ sentence: 'HDM', everyMs: 1000 }, { sentence: 'VTG' }] }],
});
const plotter = sentenceSheet('course-plotter', {
  name: 'Old plotter with a heading line, as its manual has it',
  kind: 'instrument',
  ports: [{ id: 'in', role: 'listen', hears: [{ sentence: 'HDM' }, { sentence: 'VTG' }] }],
});

/** A plotter draws heading, which is magnetic, beside course over ground, which is true, and knows no variation. */
export const readingsVariationMissing: Fault = {
  rule: 'readings/variation-missing',
  about: ['plotter-courses', 'compass-courses.out'],
  plant: (before) =>
    withPair(
      {
        ...before,
        sheets: [...before.sheets, compass, plotter],
        kit: [
          ...before.kit,
          atHelm('compass-courses', 'compass with receiver', 'course-talker'),
          atHelm('plotter-courses', 'plotter with heading line', 'course-plotter'),
        ],
        needs: [
          ...before.needs,
          { reading: 'heading', at: 'plotter-courses', must: false },
          { reading: 'course-speed-ground', at: 'plotter-courses', must: false },
        ],
      },
      'pair-courses',
      'compass-courses.out',
      'plotter-courses.in',
    ),
};
