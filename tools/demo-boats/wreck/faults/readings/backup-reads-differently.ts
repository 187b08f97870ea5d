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
  about: ['depth-old', 'sounder-a', 'sounder-b'],
  plant: (before) => {
    const boat = {
      ...before,
      sheets: [...before.sheets, sounder('DPT'), sounder('DBT'), repeater],
      kit: [
        ...before.kit,
        atHelm('sounder-a', 'newer sounder', 'sounder-dpt'),
        atHelm('sounder-b', 'older sounder', 'sounder-dbt'),
        atHelm('depth-old', 'depth repeater', 'depth-repeater'),
      ],
      needs: [...before.needs, { reading: 'depth' as const, at: 'depth-old', must: false }],
    };
    const one = withPair(boat, 'pair-sounder-a', 'sounder-a.out', 'depth-old.first');
    const both = withPair(one, 'pair-sounder-b', 'sounder-b.out', 'depth-old.second');
    return withSource(both, { reading: 'depth', at: 'depth-old', primary: 'sounder-a.out' });
  },
};
