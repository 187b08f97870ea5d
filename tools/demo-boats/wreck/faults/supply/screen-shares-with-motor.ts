import type { Fault } from '../../fault.ts';
import { circuit, wiredSheet, wiredUnit, withMore } from '../../supply-parts.ts';

/** An instrument tapped off the circuit of the bow thruster. */
export const supplyScreenSharesWithMotor: Fault = {
  rule: 'supply/screen-shares-with-motor',
  about: ['c-thruster', 'switches', 'thruster-gauge'],
  plant: (boat) =>
    withMore(boat, {
      sheets: [
        wiredSheet('bow-thruster-kind', { kind: 'thruster', power: { typical: 0.02, max: 6 } }),
        wiredSheet('thruster-gauge-kind', { kind: 'instrument' }),
      ],
      kit: [wiredUnit('bow-thruster', 'bow thruster'), wiredUnit('thruster-gauge', 'gauge of the thruster')],
      switches: [circuit('c-thruster', ['bow-thruster.dc', 'thruster-gauge.dc'], { fusedEach: true })],
    }),
};
