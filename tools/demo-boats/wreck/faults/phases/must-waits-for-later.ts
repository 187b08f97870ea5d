import type { Fault } from '../../fault.ts';
import { atHelm, sentenceSheet, withPair } from '../../pair-units.ts';

const talker = sentenceSheet('late-rudder-sheet', {
  name: 'Rudder sender, as its manual has it',
  kind: 'rudder-sensor',
  ports: [{ id: 'out', role: 'talk', sends: [{ sentence: 'RSA' }] }],
});
const dial = sentenceSheet('waiting-dial-sheet', {
  name: 'Small rudder dial, as its manual has it',
  kind: 'instrument',
  ports: [{ id: 'in', role: 'listen', hears: [{ sentence: 'RSA' }] }],
});

/** A dial must show the rudder from the first phase on, and the sender comes in the second. */
export const phasesMustWaitsForLater: Fault = {
  rule: 'phases/must-waits-for-later',
  about: ['waiting-dial'],
  plant: (boat) =>
    withPair(
      {
        ...boat,
        sheets: [...boat.sheets, talker, dial],
        kit: [
          ...boat.kit,
          { ...atHelm('waiting-dial', 'small rudder dial', dial.id), fate: 'comes' as const },
          {
            ...atHelm('late-rudder', 'rudder sender of the second winter', talker.id),
            fate: 'comes' as const,
            phase: 2,
          },
        ],
        needs: [...boat.needs, { reading: 'rudder' as const, at: 'waiting-dial', must: true }],
      },
      'pair-late-rudder',
      'late-rudder.out',
      'waiting-dial.in',
    ),
};
