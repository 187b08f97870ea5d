import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { withFedUnit } from '../../fed-unit.ts';
import { soundPanel, withMore } from '../../supply-parts.ts';

/** A panel in the saloon behind a feeder that was meant for two lamps. */
export const powerFeederLosesTooMuch: Fault = {
  rule: 'power/feeder-loses-too-much',
  about: ['saloon-panel'],
  plant: (boat) =>
    withFedUnit(
      withMore(boat, {
        panels: [
          soundPanel('saloon-panel', 'house', {
            place: 'fore-cabin',
            feeder: { length: taped(8), areaMm2: 4 },
            main: { kind: 'fuse', family: 'anl', distance: taped(0.1), sheathed: true },
            mainA: 20,
          }),
        ],
      }),
      { kit: { id: 'tv', name: 'television', place: 'bilge-well' }, maxA: 8, panel: 'saloon-panel' },
    ),
};
