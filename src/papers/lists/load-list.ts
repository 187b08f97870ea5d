import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import type { ListTable } from '../table/list-table.ts';
import { loadRows, loadSumRows } from './load-rows.ts';

const columns: ListTable['columns'] = [
  { id: 'draws', head: 'draws', share: 2.6 },
  { id: 'typical-before', head: 'typical before', unit: 'A', kind: 'figure' },
  { id: 'most-before', head: 'most before', unit: 'A', kind: 'figure' },
  { id: 'peak-before', head: 'for moments before', unit: 'A', kind: 'figure' },
  { id: 'typical-after', head: 'typical after', unit: 'A', kind: 'figure' },
  { id: 'most-after', head: 'most after', unit: 'A', kind: 'figure' },
  { id: 'peak-after', head: 'for moments after', unit: 'A', kind: 'figure' },
  { id: 'fed-by', head: 'fed by', share: 2 },
  { id: 'lowest', head: 'lowest', unit: 'V', kind: 'figure', digits: 2 },
  { id: 'needs', head: 'needs', unit: 'V', kind: 'figure' },
  { id: 'port', head: 'port', kind: 'label', printed: false },
];

/** What every unit drew and draws, then what each bank and converter gives with everything drawing. */
export const loadList = (boat: Boat, plan: Plan): ListTable => {
  const index = cardBoat(boat);
  const sums = loadSumRows(index, plan);
  const sumOf = (phase: string, source: string) => sums.find((row) => row.phase === phase && row.source === source);
  const figure = (words: string | undefined): number | undefined =>
    words === undefined ? undefined : Number(words.replace(' A', ''));
  const phases = [...new Set(sums.map(({ phase }) => phase))].filter((phase) => phase !== 'before');
  const sources = [...new Set(sums.map(({ source }) => source))];
  return {
    id: 'loads',
    title: 'What draws',
    says: 'Amperes of each unit before the refit and after it; under them what each source gives with everything drawing at once.',
    columns,
    rows: [
      ...loadRows(index, plan).map(({ what, before, after, fedBy, lowestV, key }) => [
        what,
        before?.typicalA,
        before?.mostA,
        before?.peakA,
        after?.typicalA,
        after?.mostA,
        after?.peakA,
        fedBy,
        lowestV,
        after?.minV,
        key,
      ]),
      ...sources.flatMap((source) =>
        phases.map((phase) => [
          `all on ${source}${phases.length === 1 ? '' : `, ${phase}`}`,
          figure(sumOf('before', source)?.typical),
          figure(sumOf('before', source)?.most),
          undefined,
          figure(sumOf(phase, source)?.typical),
          figure(sumOf(phase, source)?.most),
          ...columns.slice(6).map(() => undefined),
        ]),
      ),
    ],
    empty: 'Nothing aboard is known to draw anything.',
  };
};
