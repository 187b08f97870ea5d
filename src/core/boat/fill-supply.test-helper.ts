import type { Draft } from 'mutative';
import type { Boat } from './boat-schema.ts';

const guessed = (valueM: number): Boat['ways'][number]['length'] => ({ valueM, how: 'guessed' });

/** A second bank, what charges, what converts, a second panel, and a second bus. */
export const fillSupply = (boat: Draft<Boat>): void => {
  boat.buses.push({ id: 'aft-bus', name: 'Second bus', protocol: 'nmea2000', shieldAt: ['locker', 'helm'] });
  for (const join of boat.joins) if (join.id === 'radio-position') join.shieldAt = ['radio', 'converter'];
  boat.supply.banks.push({
    id: 'engine-bank',
    place: 'battery-box',
    chemistry: 'agm',
    nominalV: 12,
    capacityAh: 70,
    for: 'start',
    coldCrankingA: 600,
    shortCircuitA: 2000,
    main: {
      kind: 'fuse',
      family: 'class-t',
      distance: guessed(0.2),
      sheathed: true,
      interruptA: 20000,
      ratingA: 110,
    },
    isolator: true,
    partedBy: 'relay',
    seen: true,
  });
  boat.supply.chargers = [
    { id: 'shore-charger', place: 'locker', kind: 'mains', charges: ['house', 'engine-bank'], ratedA: 30 },
    { id: 'aft-charger', place: 'locker', kind: 'dcdc', charges: ['engine-bank'], is: 'aft-supply' },
  ];
  boat.supply.negativeAt = 'battery-box';
  const [mainPanel] = boat.supply.panels;
  if (mainPanel !== undefined) {
    mainPanel.main = { kind: 'breaker', family: 'panel-breaker', distance: guessed(3), interruptA: 3000 };
    mainPanel.freeWays = 2;
    for (const circuit of mainPanel.circuits)
      Object.assign(circuit, { interruptA: 1500, fusedEach: true, laid: 'pair' });
  }
  boat.supply.panels.push({ id: 'aft-panel', place: 'helm', from: 'house', tapV: 6, circuits: [] });
  for (const id of ['radio-supply', 'aft-supply']) {
    boat.supply.dcdc.push({ id, place: 'locker', outV: 12, ratedA: 10, efficiencyPct: 90, isolated: true });
  }
};
