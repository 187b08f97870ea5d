import { taped } from '../../base.ts';
import { withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';
import { circuit, soundBank, soundPanel, wiredSheet, withMore } from '../../supply-parts.ts';

/** A small bus hangs on the one battery of the dinghy engine. */
export const supplyRebootsWhileCranking: Fault = {
  rule: 'supply/reboots-while-cranking',
  about: ['dip-bank', 'dip-key'],
  plant: (before) => {
    const withBus = withOwnBus(before, {
      id: 'dip-bus',
      name: 'Bus of the dinghy engine',
      sheet: {
        ...wiredSheet('dip-keypad'),
        kind: 'keypad',
        plugs: [{ id: 'bus', connector: 'n2k-micro', gender: 'male' }],
        ports: [{ id: 'n2k', onPlug: 'bus', protocol: 'nmea2000', role: 'both', len: 1, sends: [{ pgn: 127502 }] }],
        power: [{ port: 'n2k', typical: 0.04, max: 0.05, unit: 'A', behaves: 'current', minV: 10.5, maxV: 16 }],
      },
      kit: [{ id: 'dip-key', name: 'keypad that wants 10.5 V', place: 'aft-cabin', tail: taped(0.3) }],
      walk: [{ place: 'aft-cabin', tees: ['dip-key.n2k', 'feed'] }],
    });
    const boat = withMore(withBus, {
      banks: [soundBank('dip-bank', { for: 'both' })],
      panels: [soundPanel('dip-panel', 'dip-bank')],
    });
    const panels = boat.supply.panels.map((panel) => ({
      ...panel,
      circuits: [
        ...panel.circuits.filter(({ id }) => id !== 'c-dip-bus'),
        ...(panel.id === 'dip-panel' ? [circuit('c-dip-bus', ['dip-bus'], { ratingA: 3 })] : []),
      ],
    }));
    return { ...boat, supply: { ...boat.supply, panels } };
  },
};
