import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { sentenceSheet, withPair } from '../../pair-units.ts';

const talker = sentenceSheet('late-probe-sheet', {
  name: 'Water probe of the second winter, as its manual has it',
  kind: 'temperature-sensor',
  ports: [{ id: 'out', role: 'talk', sends: [{ sentence: 'MTW' }] }],
});
const dial = sentenceSheet('probe-dial-sheet', {
  name: 'Temperature dial, as its manual has it',
  kind: 'instrument',
  ports: [{ id: 'in', role: 'listen', hears: [{ sentence: 'MTW' }] }],
});

/** The probe comes in the second phase, behind a lining that takes hours to open. */
export const phasesNothingProvided: Fault = {
  rule: 'phases/nothing-provided',
  about: ['behind-lining'],
  plant: (boat) =>
    withPair(
      {
        ...boat,
        places: [
          ...boat.places,
          {
            id: 'lining',
            name: 'behind the cabin lining',
            xM: 4,
            yM: 1.1,
            zM: 1,
            exposure: 'dry',
            reach: 'hard',
            tees: false,
          },
        ],
        ways: [
          ...boat.ways,
          {
            id: 'behind-lining',
            ends: ['helm-locker', 'lining'],
            length: taped(1.8),
            kind: 'open',
            known: 'seen',
            hours: 4,
          },
        ],
        sheets: [...boat.sheets, talker, dial],
        kit: [
          ...boat.kit,
          {
            id: 'probe-dial',
            name: 'temperature dial',
            sheet: dial.id,
            fate: 'comes',
            place: 'helm',
            tail: taped(0.5),
          },
          {
            id: 'late-probe',
            name: 'water probe of the second winter',
            sheet: talker.id,
            fate: 'comes',
            phase: 2,
            place: 'lining',
            tail: taped(0.5),
          },
        ],
      },
      'pair-late-probe',
      'late-probe.out',
      'probe-dial.in',
    ),
};
