import type { Fault } from '../../fault.ts';
import { atHelm, sentenceSheet, withPair } from '../../pair-units.ts';

const sounder = sentenceSheet('keel-sounder', {
  name: 'Old sounder that sends depth below keel, as its manual has it',
  kind: 'instrument',
  ports: [{ id: 'out', role: 'talk', sends: [{ sentence: 'DBK' }] }],
});
const converter = sentenceSheet('depth-rewriter', {
  name: 'Multiplexer that writes depth anew, as its manual has it',
  kind: 'multiplexer',
  ports: [
    { id: 'in', role: 'listen', hears: [{ sentence: 'DBK' }] },
    { id: 'out', role: 'talk', sends: [{ sentence: 'DPT' }] },
  ],
  turns: [{ fromPort: 'in', toPort: 'out', carries: [{ reading: 'depth' }] }],
});
const screen = sentenceSheet('dpt-screen', {
  name: 'Screen for DPT, as its manual has it',
  kind: 'instrument',
  ports: [{ id: 'in', role: 'listen', hears: [{ sentence: 'DPT' }] }],
});

/** Depth below the keel goes on as depth with an offset of its own, which can be set once more. */
export const readingsOffsetTwice: Fault = {
  rule: 'readings/offset-twice',
  about: ['sounder-keel.out', 'rewriter', 'screen-dpt'],
  plant: (before) => {
    const boat = {
      ...before,
      sheets: [...before.sheets, sounder, converter, screen],
      kit: [
        ...before.kit,
        atHelm('sounder-keel', 'keel sounder', 'keel-sounder'),
        atHelm('rewriter', 'multiplexer that writes depth anew', 'depth-rewriter'),
        atHelm('screen-dpt', 'depth screen', 'dpt-screen'),
      ],
      needs: [...before.needs, { reading: 'depth' as const, at: 'screen-dpt', must: false }],
    };
    const one = withPair(boat, 'pair-keel', 'sounder-keel.out', 'rewriter.in');
    return withPair(one, 'pair-rewritten', 'rewriter.out', 'screen-dpt.in');
  },
};
