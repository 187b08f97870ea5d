import type { Fault } from '../../fault.ts';
import { withWifiMux } from '../../pair-units.ts';

/** A box that puts the radio’s line on a wifi, and takes back whatever a phone sends; nobody asked for that. */
export const remoteWritesWithoutNeed: Fault = {
  rule: 'remote/writes-without-need',
  about: ['free-mux'],
  plant: (boat) =>
    withWifiMux(boat, {
      stem: 'free',
      mux: 'multiplexer that takes whatever comes',
      recorder: 'recorder of the free line',
      remote: { writes: 'may-write', mustWrite: false },
    }),
};
