import type { Join } from '../../src/core/boat/boat-schema.ts';
import { lead, onBus } from './joins.ts';

/** Sandpiper's joins, written out from the words of her tables; what the old plotter fed last. */
export const sandpiperJoins: readonly Join[] = [
  onBus('nav', ['plotter', 'mux', 'ais', 'heading']),
  lead('lead-log', 'analog', 'log-wheel.signal', 'log-depth.log'),
  lead('lead-depth', 'analog', 'depth-element.echo', 'log-depth.echo'),
  lead('lead-wind', 'analog', 'wind-head.signal', 'wind-display.head'),
  lead('pair-log', 'nmea0183', 'log-depth.out', 'mux.in-1'),
  lead('pair-wind', 'nmea0183', 'wind-display.out', 'mux.in-2'),
  lead('pair-out', 'nmea0183', 'mux.out', 'pilot.in', 'vhf.in'),
  lead('coax-vhf', 'coax', 'vhf-antenna.rf', 'vhf.rf'),
  lead('coax-ais', 'coax', 'ais-whip.rf', 'ais.vhf-rf'),
  lead('coax-ais-gnss', 'coax', 'ais-gnss.rf', 'ais.gnss-rf'),
  lead('old-pair', 'nmea0183', 'old-plotter.out', 'pilot.in', 'vhf.in'),
];
