import type { Boat } from '../../../src/core/boat/boat-schema.ts';
import type { Measures } from '../../../src/core/boat/measures.ts';
import type { ShipPapers } from '../../../src/core/boat/ship-papers.ts';
import { atHelm, sentenceSheet, withPair } from './pair-units.ts';

type Typed = NonNullable<Measures['typed']>[number];

/** The boat with what was read off some of her units. */
export const withTyped = (boat: Boat, ...typed: readonly Typed[]): Boat => ({
  ...boat,
  measures: { ...boat.measures, typed: [...(boat.measures?.typed ?? []), ...typed] },
});

/** The boat with other papers. */
export const withPapers = (boat: Boat, change: (papers: ShipPapers) => ShipPapers): Boat => ({
  ...boat,
  papers: change(boat.papers ?? {}),
});

/** The boat with one more sounder that sends DPT, its screen, and the wish to see the depth below the keel there. */
export const withKeelDepth = (boat: Boat, name: string): Boat => {
  const [sounder, screen] = [`sounder-${name}`, `screen-${name}`];
  const more: Boat = {
    ...boat,
    sheets: [
      ...boat.sheets,
      sentenceSheet(`${sounder}-sheet`, {
        name: 'Sounder that sends DPT, as its manual has it',
        kind: 'instrument',
        ports: [{ id: 'out', role: 'talk', sends: [{ sentence: 'DPT' }] }],
      }),
      sentenceSheet(`${screen}-sheet`, {
        name: 'Screen for DPT, as its manual has it',
        kind: 'instrument',
        ports: [{ id: 'in', role: 'listen', hears: [{ sentence: 'DPT' }] }],
      }),
    ],
    kit: [
      ...boat.kit,
      atHelm(sounder, `sounder of the ${name}`, `${sounder}-sheet`),
      atHelm(screen, `depth screen of the ${name}`, `${screen}-sheet`),
    ],
    needs: [...boat.needs, { reading: 'depth', at: screen, must: false, reference: 'keel', withOffset: true }],
    measures: {
      ...boat.measures,
      transducers: [...(boat.measures?.transducers ?? []), { unit: sounder, below: { valueM: 0.3, how: 'taped' } }],
    },
  };
  return withPair(more, `pair-${name}`, `${sounder}.out`, `${screen}.in`);
};

/** The boat with an AIS of her own that comes or stays, which has its position antenna inside. */
export const withAis = (boat: Boat, id: string, fate: 'stays' | 'comes'): Boat => ({
  ...boat,
  sheets: [
    ...boat.sheets,
    {
      id: `${id}-sheet`,
      name: 'AIS class B, as its manual has it',
      kind: 'ais',
      source: 'manual',
      sourceNote: 'Read aboard in its manual, chapter on connections.',
      plugs: [{ id: 'gnss', connector: 'tnc', gender: 'female' }],
      ports: [{ id: 'gnss-rf', onPlug: 'gnss', protocol: 'coax', role: 'listen', hears: [{ reading: 'position' }] }],
      compassSafe: { valueM: 0.2, how: 'papers', lessM: 0, moreM: 0 },
      earthing: { body: 'plastic' },
    },
  ],
  kit: [...boat.kit, { id, name: `AIS ${id}`, sheet: `${id}-sheet`, fate, place: 'panel-locker' }],
});
