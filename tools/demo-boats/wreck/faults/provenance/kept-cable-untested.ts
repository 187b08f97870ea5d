import { taped } from '../../base.ts';
import type { Fault } from '../../fault.ts';

/** The old plotter's pair is kept, and nobody has put a meter on it. */
export const provenanceKeptCableUntested: Fault = {
  rule: 'provenance/kept-cable-untested',
  about: ['old-plotter-pair'],
  plant: (boat) => ({
    ...boat,
    cables: [
      ...boat.cables,
      {
        id: 'old-plotter-pair',
        kind: 'pair',
        from: { place: 'roof' },
        to: { place: 'helm' },
        serves: 'pair-plotter',
        ways: ['w11', 'w5', 'w4'],
        length: taped(6.5),
        diameterMm: 5,
        condition: 'untested',
        fate: 'stays',
      },
    ],
  }),
};
