import type { Sheet } from '../../../../../src/core/boat/sheet.ts';
import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';

const part = (id: string, role: 'talk' | 'listen', leadM?: number): Sheet => ({
  id,
  name: `Analog ${id}, as its manual has it`,
  kind: 'analog-part',
  source: 'manual',
  sourceNote: 'Read aboard in its manual, chapter on connections.',
  plugs: [
    {
      id: 'lead',
      connector: 'own-plug',
      gender: 'male',
      ...(leadM === undefined ? {} : { fixedLead: taped(leadM), mayCut: false, mayExtend: false }),
    },
  ],
  ports: [
    {
      id: 'lead',
      onPlug: 'lead',
      protocol: 'analog',
      role,
      ...(role === 'talk' ? { sends: [{ reading: 'depth' as const }] } : {}),
    },
  ],
});

/** A transducer with 3 m of lead, 7 m of way from its box. */
export const plugsFixedLeadTooShort: Fault = {
  rule: 'plugs/fixed-lead-too-short',
  about: ['short-transducer'],
  plant: (boat) => ({
    ...boat,
    sheets: [...boat.sheets, part('short-lead', 'talk', 3), part('far-box', 'listen')],
    kit: [
      ...boat.kit,
      {
        id: 'short-transducer',
        name: 'transducer with a short lead',
        sheet: 'short-lead',
        fate: 'comes',
        place: 'bilge-well',
        tail: taped(0.3),
      },
      {
        id: 'far-sounder',
        name: 'sounder box far from it',
        sheet: 'far-box',
        fate: 'comes',
        place: 'aft-cabin',
        tail: taped(0.3),
      },
    ],
    joins: [
      ...boat.joins,
      {
        id: 'far-lead',
        kind: 'analog',
        members: [
          { kit: 'short-transducer', port: 'lead', as: 'talk' },
          { kit: 'far-sounder', port: 'lead', as: 'listen' },
        ],
        hold: 'fixed',
      },
    ],
  }),
};
