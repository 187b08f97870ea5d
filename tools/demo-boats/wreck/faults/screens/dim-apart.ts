import type { Fault } from '../../fault.ts';
import { withScreens } from '../../screen-units.ts';

/** Two old instruments in the aft cabin, each with its own knob. */
export const screensDimApart: Fault = {
  rule: 'screens/dim-apart',
  about: ['knob-clock', 'knob-meter'],
  plant: (boat) =>
    withScreens(boat, 'aft-cabin', {
      'knob-clock': { name: 'Lit clock', lighting: { dims: 'own-knob' } },
      'knob-meter': { name: 'Lit voltmeter', lighting: { dims: 'own-knob' } },
    }),
};
