import type { Fault } from '../../fault.ts';
import { atHelm, sentenceSheet, withPair } from '../../pair-units.ts';

const wind = sentenceSheet('wind-by-compass', {
  name: 'Old wind instrument, as its manual has it',
  kind: 'instrument',
  ports: [{ id: 'out', role: 'talk', sends: [{ sentence: 'MWD' }] }],
});
const repeater = sentenceSheet('wind-repeater', {
  name: 'Wind repeater, as its manual has it',
  kind: 'instrument',
  ports: [{ id: 'in', role: 'listen', hears: [{ sentence: 'MWD' }] }],
});

/** A wind instrument without a compass line sends wind by the compass. */
export const readingsWindDirectionWithoutHeading: Fault = {
  rule: 'readings/wind-direction-without-heading',
  about: ['wind-north.out'],
  plant: (before) =>
    withPair(
      {
        ...before,
        sheets: [...before.sheets, wind, repeater],
        kit: [
          ...before.kit,
          atHelm('wind-north', 'wind instrument without compass', 'wind-by-compass'),
          atHelm('wind-repeating', 'wind repeater', 'wind-repeater'),
        ],
      },
      'pair-wind-north',
      'wind-north.out',
      'wind-repeating.in',
    ),
};
