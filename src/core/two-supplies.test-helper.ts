import { aBoat, type BoatBuilder } from './boat/a-boat.test-helper.ts';

/** The small boat with its bus on an isolated converter of its own; `isolated`: whether the display keeps its two minuses apart. */
export const twoSupplies = (isolated: boolean | undefined): BoatBuilder =>
  aBoat()
    .sheet('small-display', (sheet) => {
      for (const port of sheet.ports)
        if (port.protocol === 'nmea2000' && isolated !== undefined) port.isolated = isolated;
    })
    .change((boat) => {
      boat.supply.dcdc.push({
        id: 'bus-supply',
        place: 'locker',
        outV: 12,
        ratedA: 5,
        efficiencyPct: 90,
        isolated: true,
      });
      for (const { circuits } of boat.supply.panels)
        for (const circuit of circuits) if (circuit.id === 'bus-circuit') circuit.feeds = ['bus-supply'];
      boat.supply.panels.push({
        id: 'bus-panel',
        place: 'locker',
        from: 'bus-supply',
        circuits: [{ id: 'bus-own', ratingA: 3, kind: 'fuse', feeds: ['nav'] }],
      });
    });
