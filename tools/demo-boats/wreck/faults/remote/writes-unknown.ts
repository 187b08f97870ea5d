import type { Fault } from '../../fault.ts';
import { withWifiMux } from '../../pair-units.ts';

/** A multiplexer with wifi, whose settings nobody has opened, talks to a recorder. */
export const remoteWritesUnknown: Fault = {
  rule: 'remote/writes-unknown',
  about: ['open-mux'],
  plant: (boat) => withWifiMux(boat, { stem: 'open', mux: 'multiplexer with wifi', recorder: 'recorder of the line' }),
};
