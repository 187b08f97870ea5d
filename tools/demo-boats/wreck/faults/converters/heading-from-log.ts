import type { Fault } from '../../fault.ts';
import { atHelm, sentenceSheet, withPair } from '../../pair-units.ts';

const log = sentenceSheet('speed-log', {
  name: 'Old log without a compass, as its manual has it',
  kind: 'instrument',
  ports: [{ id: 'out', role: 'talk', sends: [{ sentence: 'VHW' }] }],
});
const mixer = sentenceSheet('course-mixer', {
  name: 'Multiplexer that knows headings, as its manual has it',
  kind: 'multiplexer',
  ports: [
    { id: 'in', role: 'listen', hears: [{ sentence: 'VHW' }, { sentence: 'HDM' }] },
    { id: 'out', role: 'talk', sends: [{ sentence: 'VHW' }, { sentence: 'HDM' }] },
  ],
  turns: [{ fromPort: 'in', toPort: 'out', carries: [{ reading: 'speed-water' }, { reading: 'heading' }] }],
});

/** The log has no compass, and the multiplexer behind it turns headings. */
export const convertersHeadingFromLog: Fault = {
  rule: 'converters/heading-from-log',
  about: ['log-plain.out', 'mixer.in'],
  plant: (before) =>
    withPair(
      {
        ...before,
        sheets: [...before.sheets, log, mixer],
        kit: [
          ...before.kit,
          atHelm('log-plain', 'log without a compass', 'speed-log'),
          atHelm('mixer', 'multiplexer for courses', 'course-mixer'),
        ],
      },
      'pair-log-plain',
      'log-plain.out',
      'mixer.in',
    ),
};
