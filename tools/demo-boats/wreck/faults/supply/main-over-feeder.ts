import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';
import { soundBank, soundPanel, withMore } from '../../supply-parts.ts';

/** A fuse of 300 A guards a feeder of 10 mm². */
export const supplyMainOverFeeder: Fault = {
  rule: 'supply/main-over-feeder',
  about: ['thin-panel', 'thin-bank'],
  plant: (boat) =>
    withMore(boat, {
      banks: [
        soundBank('thin-bank', { main: { kind: 'fuse', family: 'class-t', distance: taped(0.05), ratingA: 300 } }),
      ],
      panels: [soundPanel('thin-panel', 'thin-bank', { feeder: { length: taped(1), areaMm2: 10 } })],
    }),
};
