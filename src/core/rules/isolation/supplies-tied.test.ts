import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { isolationFindings } from './isolation-case.test-helper.ts';
import { suppliesTied } from './supplies-tied.ts';

const ownBusSupply = (isolated: boolean) =>
  aBoat()
    .sheet('small-display', (sheet) => {
      for (const port of sheet.ports) if (port.protocol === 'nmea2000') port.isolated = isolated;
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

test('a bus on an isolated supply of its own passes as long as its units are isolated', () => {
  expect(isolationFindings(suppliesTied, ownBusSupply(true))).toEqual([]);
});

test('a unit that joins its own minus to that of the bus ties the two: a fault that names both', () => {
  const [finding] = isolationFindings(suppliesTied, ownBusSupply(false));
  expect(finding).toMatchObject({ level: 'fault', about: ['display'] });
  expect(finding?.says).toContain('the minus of bus-supply and that of house meet');
  expect(finding?.cure).toContain('isolator');
});
