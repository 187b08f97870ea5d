import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withMetalUnit } from '../../on-steel.ts';

/** The engine has isolated poles, but the oil sender that was put in later is its own minus. */
export const isolationEngineNotIsolated: Fault = {
  rule: 'isolation/engine-not-isolated',
  about: ['oil-sender'],
  plant: (before) => {
    const boat = withMetalUnit(before, {
      kit: { id: 'oil-sender', name: 'oil sender', place: 'engine-room', tail: taped(0.3), mount: 'metal' },
      kind: 'sender',
      earthing: { bodyTo: 'negative' },
    });
    return {
      ...boat,
      sheets: [
        ...boat.sheets,
        {
          id: 'old-diesel-sheet',
          name: 'Diesel with isolated poles, by its manual',
          kind: 'engine',
          source: 'manual',
          sourceNote: 'Invented for this boat.',
          plugs: [],
          ports: [],
          earthing: { poles: 'isolated' },
        },
      ],
      kit: [
        ...boat.kit,
        {
          id: 'old-diesel',
          name: 'diesel',
          sheet: 'old-diesel-sheet',
          fate: 'stays',
          place: 'engine-room',
          mount: 'isolated',
        },
      ],
    };
  },
};
