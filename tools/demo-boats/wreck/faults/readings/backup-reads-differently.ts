import type { Fault } from '../../fault.ts';
import { atHelm, sentenceSheet, withPair, withSource } from '../../pair-units.ts';

const sounder = (sentence: 'DPT' | 'DBT') =>
  sentenceSheet(`sounder-${sentence.toLowerCase()}`, {
    name: `Old sounder that sends ${sentence}, as its manual has it`,
    kind: 'instrument',
    ports: [{ id: 'out', role: 'talk', sends: [{ sentence }] }],
  });
const repeater = sentenceSheet('depth-repeater', {
  name: 'Repeater with two inputs, as its manual has it',
  kind: 'instrument',
  ports: ['first', 'second'].map((id) => ({ id, role: 'listen', hears: [{ sentence: 'DPT' }, { sentence: 'DBT' }] })),
});

/** A repeater shows depth below the keel from one sounder and, should that fail, below the transducer from another. */
export const readingsBackupReadsDifferently: Fault = {
  rule: 'readings/backup-reads-differently',
  about: ['depth-repeating', 'depth-first.out', 'depth-second.out'],
  plant: (before) => {
    const boat = {
      ...before,
      sheets: [...before.sheets, sounder('DPT'), sounder('DBT'), repeater],
      kit: [
        ...before.kit,
        atHelm('depth-first', 'newer sounder', 'sounder-dpt'),
        atHelm('depth-second', 'older sounder', 'sounder-dbt'),
        atHelm('depth-repeating', 'depth repeater', 'depth-repeater'),
      ],
      needs: [...before.needs, { reading: 'depth' as const, at: 'depth-repeating', must: false }],
    };
    const one = withPair(boat, 'pair-depth-first', 'depth-first.out', 'depth-repeating.first');
    const both = withPair(one, 'pair-depth-second', 'depth-second.out', 'depth-repeating.second');
    return withSource(both, { reading: 'depth', at: 'depth-repeating', primary: 'depth-first.out' });
  },
};
