import type { Fault } from '../../fault.ts';
import { converterOf, soundPanel, withMore } from '../../supply-parts.ts';

/** A converter that nobody gave an input. */
export const supplyFedByNothing: Fault = {
  rule: 'supply/fed-by-nothing',
  about: ['dry-converter', 'dry-panel'],
  plant: (boat) =>
    withMore(boat, {
      dcdc: [converterOf('dry-converter')],
      panels: [soundPanel('dry-panel', 'dry-converter', { place: 'panel-locker', mainA: 5 })],
    }),
};
