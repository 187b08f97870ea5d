import { expect, test } from 'vitest';
import { type Recipe, told } from '../told.test-helper.ts';

test.each<[string, Recipe, string]>([
  [
    'a panel fed by nothing known',
    (boat) => {
      for (const panel of boat.supply.panels) panel.from = 'hose';
    },
    'supply.panels[0].from: There is no bank, panel or DC converter "hose"; did you mean `house`?',
  ],
  [
    'two panels that feed each other',
    (boat) => {
      for (const panel of boat.supply.panels) panel.from = 'side-panel';
      boat.supply.panels.push({ id: 'side-panel', place: 'helm', from: 'main-panel', circuits: [] });
    },
    'supply.panels[0].from: The panel "main-panel" is fed by itself, straight or through other panels.',
  ],
  [
    'a circuit to a port that is not there',
    (boat) => {
      boat.supply.panels[0]?.circuits[1]?.feeds.push('gnss.dc');
    },
    'supply.panels[0].circuits[1].feeds[2]: There is no port "dc" of "gnss".',
  ],
  [
    'a circuit to a port that takes no power',
    (boat) => {
      boat.supply.panels[0]?.circuits[1]?.feeds.push('gnss.n2k');
    },
    'supply.panels[0].circuits[1].feeds[2]: A circuit feeds a dc port or a bus, and the port "gnss.n2k" is nmea2000.',
  ],
  [
    'a circuit to nothing known',
    (boat) => {
      boat.supply.panels[0]?.circuits[1]?.feeds.push('lights');
    },
    'supply.panels[0].circuits[1].feeds[2]: There is no bus, bank, panel, DC converter or charger "lights".',
  ],
  [
    'a panel without a main that has one of 30 A',
    (boat) => {
      for (const panel of boat.supply.panels) panel.main = { kind: 'none' };
    },
    'supply.panels[0].mainA: The panel "main-panel" has no main fuse, and one of 30 A.',
  ],
  [
    'a tap of as many volts as the whole bank',
    (boat) => {
      for (const panel of boat.supply.panels) panel.tapV = 12;
    },
    'supply.panels[0].tapV: The panel "main-panel" takes 12 V from a tap, and "house" is no bank of more volts.',
  ],
  [
    'a charger of a bank that is not there',
    (boat) => {
      boat.supply.chargers = [{ id: 'solar', place: 'locker', kind: 'solar', charges: ['hose'] }];
    },
    'supply.chargers[0].charges[0]: There is no bank "hose"; did you mean `house`?',
  ],
  [
    'a charger that is a unit which is not there',
    (boat) => {
      boat.supply.chargers = [{ id: 'solar', place: 'locker', kind: 'solar', charges: ['house'], is: 'panels' }];
    },
    'supply.chargers[0].is: There is no unit or DC converter "panels".',
  ],
  [
    'a common negative nowhere',
    (boat) => {
      boat.supply.negativeAt = 'bow';
    },
    'supply.negativeAt: There is no place "bow".',
  ],
  [
    'a shield of a bus earthed nowhere aboard',
    (boat) => {
      for (const bus of boat.buses) bus.shieldAt = ['bow'];
    },
    'buses[0].shieldAt[0]: There is no place "bow".',
  ],
  [
    'a shield of a cable earthed at a unit that it does not reach',
    (boat) => {
      for (const join of boat.joins) if (join.kind === 'nmea0183') join.shieldAt = ['display'];
    },
    'joins[1].shieldAt[0]: There is no unit "display" of "radio-position".',
  ],
])('%s is refused', (_, recipe, expected) => {
  expect(told(recipe)[0]).toBe(expected);
});
