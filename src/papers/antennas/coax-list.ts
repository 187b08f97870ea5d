import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ListTable } from '../table/list-table.ts';
import { coaxWords } from './aerial-words.ts';

const verdicts = {
  ok: 'within its limit',
  advice: 'above the aim of a new run',
  doubt: 'kept, above its limit: measure it',
  fault: 'too much for a new run',
} as const;

/** Every coax from a radio to its antenna: both sums of its loss, the watts that arrive, what a bad antenna would read. */
export const coaxList = (boat: Boat, { coax }: Plan): ListTable => {
  const { kit } = indexBoat(boat);
  const nameOf = (port: string): string => kit.get(port.split('.')[0] ?? port)?.name ?? port;
  return {
    id: 'coax',
    title: 'Coax and what arrives',
    says: 'From radio to antenna at its longest, every joint counted: one at each end, two more at each break. New coax is judged by sound joints, kept coax by weathered ones until each was opened and found dry.',
    columns: [
      { id: 'radio', head: 'radio', share: 1.6 },
      { id: 'antenna', head: 'antenna', share: 1.6 },
      { id: 'coax', head: 'coax', share: 2.2 },
      { id: 'mhz', head: 'at', unit: 'MHz', kind: 'figure', digits: 1, printed: false },
      { id: 'length', head: 'longest', unit: 'm', kind: 'figure', digits: 2, share: 0.8 },
      { id: 'joints', head: 'joints', kind: 'figure', share: 0.6 },
      { id: 'cable-db', head: 'in the cable', unit: 'dB', kind: 'figure', digits: 2, share: 0.8 },
      { id: 'sound-db', head: 'sound', unit: 'dB', kind: 'figure', digits: 2, share: 0.7 },
      { id: 'weathered-db', head: 'weathered', unit: 'dB', kind: 'figure', digits: 2, share: 0.8 },
      { id: 'sends', head: 'sends', unit: 'W', kind: 'figure', digits: 1, share: 0.6 },
      { id: 'sound-w', head: 'arrives, sound', unit: 'W', kind: 'figure', digits: 1, share: 0.8 },
      { id: 'weathered-w', head: 'weathered', unit: 'W', kind: 'figure', digits: 1, share: 0.8 },
      { id: 'verdict', head: 'is', share: 1.2 },
      { id: 'bad-reads', head: 'a bad antenna reads, not 3', kind: 'figure', digits: 1, share: 0.9 },
      { id: 'measured', head: 'measured', kind: 'blank', share: 0.8 },
    ],
    rows: coax.map((run) => [
      nameOf(run.radio),
      nameOf(run.antenna),
      coaxWords(run),
      run.mhz,
      run.lengthM,
      run.joints,
      run.cableDb,
      run.soundDb,
      run.weatheredDb,
      run.powerW,
      run.soundW,
      run.weatheredW,
      verdicts[run.verdict],
      run.faultReadsSwr,
      undefined,
    ]),
    empty: 'No coax leads from a radio to an antenna.',
  };
};
