import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const hasty = { id: 'hasty', name: 'sensor left as it was tried', place: 'aft-cabin', tail: taped(0.3) };
const sheet = fillerSheet('hasty-sensor', 'Attitude sensor', 1);

/** Attitude every 50 ms where a second is usual. */
export const trafficSensorLeftFast: Fault = {
  rule: 'traffic/sensor-left-fast',
  about: ['hasty.n2k'],
  plant: (boat) =>
    withOwnBus(boat, {
      id: 'haste',
      name: 'Bus of haste',
      sheet: { ...sheet, ports: sheet.ports.map((port) => ({ ...port, sends: [{ pgn: 127257, everyMs: 50 }] })) },
      kit: [hasty],
      walk: [{ place: 'aft-cabin', tees: ['hasty.n2k', 'feed'] }],
    }),
};
