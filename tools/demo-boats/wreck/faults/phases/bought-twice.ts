import type { Fault } from '../../fault.ts';
import { atHelm, sentenceSheet, withPair } from '../../pair-units.ts';

const joiner = sentenceSheet('echo-joiner-sheet', {
  name: 'Combiner of old lines, as its manual has it',
  kind: 'multiplexer',
  ports: [
    { id: 'in', role: 'listen', hears: [{ sentence: 'DBT' }] },
    { id: 'out', role: 'talk', sends: [{ sentence: 'DBT' }] },
  ],
  turns: [{ fromPort: 'in', toPort: 'out', carries: [{ reading: 'depth' }] }],
});
const talker = sentenceSheet('echo-talker-sheet', {
  name: 'Old sounder, as its manual has it',
  kind: 'sounder',
  ports: [{ id: 'out', role: 'talk', sends: [{ sentence: 'DBT' }] }],
});
const dial = sentenceSheet('echo-dial-sheet', {
  name: 'Old depth dial, as its manual has it',
  kind: 'instrument',
  ports: [{ id: 'in', role: 'listen', hears: [{ sentence: 'DBT' }] }],
});

/** A combiner is bought for a dial that leaves in the second phase; from then on nobody asks for what passes it. */
export const phasesBoughtTwice: Fault = {
  rule: 'phases/bought-twice',
  about: ['echo-joiner'],
  plant: (boat) => {
    const withUnits = {
      ...boat,
      sheets: [...boat.sheets, joiner, talker, dial],
      kit: [
        ...boat.kit,
        { ...atHelm('echo-joiner', 'combiner of the old sounder', joiner.id), fate: 'comes' as const },
        atHelm('echo-talker', 'old sounder in the dash', talker.id),
        { ...atHelm('echo-dial', 'old depth dial', dial.id), fate: 'goes' as const, phase: 2 },
        atHelm('echo-repeater', 'depth repeater nobody looks at', dial.id),
      ],
      needs: [...boat.needs, { reading: 'depth' as const, at: 'echo-dial', must: false }],
    };
    const fed = withPair(withUnits, 'pair-echo-in', 'echo-talker.out', 'echo-joiner.in');
    return withPair(
      withPair(fed, 'pair-echo-dial', 'echo-joiner.out', 'echo-dial.in'),
      'pair-echo-repeater',
      'echo-joiner.out',
      'echo-repeater.in',
    );
  },
};
