import type { Port, Sheet } from '../../../../../src/core/boat/sheet.ts';
import type { Fault } from '../../fault.ts';

const onWire = (id: string, dialect: string, role: Port['role']): Sheet => ({
  id,
  name: `Unit on an old wire, ${dialect}, as its manual has it`,
  kind: 'instrument',
  source: 'manual',
  sourceNote: 'Read aboard in its manual, chapter on connections.',
  plugs: [{ id: 'wire', connector: 'maker-a-3', gender: 'female' }],
  ports: [
    {
      id: 'wire',
      onPlug: 'wire',
      protocol: 'single-wire',
      dialect,
      role,
      ...(role === 'talk'
        ? { sends: [{ reading: 'wind-apparent' as const }] }
        : { hears: [{ reading: 'wind-apparent' as const }] }),
    },
  ],
});

/** The old wind unit of one maker on an adapter lead into the repeater of another. */
export const convertersLanguagesDiffer: Fault = {
  rule: 'converters/languages-differ',
  about: ['foreign-wire', 'wind-old', 'repeater-foreign'],
  plant: (boat) => ({
    ...boat,
    sheets: [...boat.sheets, onWire('wind-on-wire', 'maker-a/1', 'talk'), onWire('ear-on-wire', 'maker-b/1', 'listen')],
    kit: [
      ...boat.kit,
      { id: 'wind-old', name: 'old wind unit of maker A', sheet: 'wind-on-wire', fate: 'stays', place: 'helm' },
      { id: 'repeater-foreign', name: 'repeater of maker B', sheet: 'ear-on-wire', fate: 'stays', place: 'helm' },
    ],
    joins: [
      ...boat.joins,
      {
        id: 'foreign-wire',
        kind: 'single-wire',
        members: [
          { kit: 'wind-old', port: 'wire', as: 'talk' },
          { kit: 'repeater-foreign', port: 'wire', as: 'listen' },
        ],
        hold: 'fixed',
      },
    ],
  }),
};
