import type { Sheet } from '../../../../../src/core/boat/sheet.ts';
import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';

const sheet: Sheet = {
  id: 'heater-sheet',
  name: 'Heater for the feet',
  kind: 'heater',
  source: 'typical',
  sourceNote: 'Invented for this boat.',
  plugs: [{ id: 'leads', connector: 'leads', gender: 'none' }],
  ports: [{ id: 'dc', onPlug: 'leads', protocol: 'dc', role: 'listen' }],
};

/** A heater from somewhere, without a plate. */
export const energyDrawNotKnown: Fault = {
  rule: 'energy/draw-not-known',
  about: ['foot-heater'],
  plant: (boat) => ({
    ...boat,
    sheets: [...boat.sheets, sheet],
    kit: [
      ...boat.kit,
      {
        id: 'foot-heater',
        name: 'heater at the helm',
        sheet: 'heater-sheet',
        fate: 'stays',
        place: 'helm-locker',
        tail: taped(0.5),
      },
    ],
    supply: {
      ...boat.supply,
      panels: boat.supply.panels.map((panel) =>
        panel.id === 'switches'
          ? {
              ...panel,
              circuits: [
                ...panel.circuits,
                { id: 'c-heater', ratingA: 10, kind: 'breaker', feeds: ['foot-heater.dc'] },
              ],
            }
          : panel,
      ),
    },
  }),
};
