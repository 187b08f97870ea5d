import { expect, test } from 'vitest';
import type { Boat } from './boat-schema.ts';
import { type Recipe, told } from './told.test-helper.ts';

test('the small boat holds together', () => {
  expect(told(() => undefined)).toEqual([]);
});

test('labels of unknown lines and accepted findings that are gone are not bad input', () => {
  expect(
    told((boat) => {
      boat.labels = { 'drop:gone~radio.wires': 'C01' };
      boat.accepted = [{ finding: 'power/drop gone', reason: 'It was.' }];
    }),
  ).toEqual([]);
});

test.each<[string, Recipe, string]>([
  [
    'a bus called like the battery',
    (boat) => {
      for (const bank of boat.supply.banks) bank.id = 'nav';
    },
    'supply.banks[0].id: "nav" is the id of a bus and of a bank; an id names one thing in the whole file.',
  ],
  [
    'a circuit called like a place',
    (boat) => {
      boat.supply.panels[0]?.circuits.push({ id: 'helm', ratingA: 5, kind: 'fuse', feeds: [] });
    },
    'supply.panels[0].circuits[2].id: "helm" is the id of a place and of a circuit; an id names one thing in the whole file.',
  ],
  [
    'two units of one id',
    (boat) => {
      boat.kit.push({ id: 'gnss', name: 'Second', sheet: 'gnss-receiver', fate: 'comes', place: 'helm' });
    },
    'kit[5].id: "gnss" is the id of a unit twice; an id names one thing in the whole file.',
  ],
  [
    'a way to a place that is not there',
    (boat) => {
      boat.ways.push({
        id: 'w',
        ends: ['helm', 'bow'],
        length: { valueM: 5, how: 'guessed' },
        kind: 'open',
        known: 'assumed',
      });
    },
    'ways[5].ends[1]: There is no place "bow".',
  ],
  [
    'a way from a place to itself',
    (boat) => {
      boat.ways.push({
        id: 'w',
        ends: ['helm', 'helm'],
        length: { valueM: 5, how: 'guessed' },
        kind: 'open',
        known: 'assumed',
      });
    },
    'ways[5].ends: The way "w" starts and ends at one place.',
  ],
  [
    'a unit at a place that is not there',
    (boat) => {
      for (const unit of boat.kit.slice(0, 1)) unit.place = 'hlem';
    },
    'kit[0].place: There is no place "hlem"; did you mean `helm`?',
  ],
  [
    'a unit without its sheet',
    (boat) => {
      for (const unit of boat.kit.slice(0, 1)) unit.sheet = 'heading-sensors';
    },
    'kit[0].sheet: There is no sheet "heading-sensors"; did you mean `heading-sensor`?',
  ],
  [
    'a day with a unit that is not there',
    (boat) => {
      boat.days = [{ id: 'weekend', name: 'Weekend', like: 'anchor', hours: [{ unit: 'radoi', hours: 4 }] }];
    },
    'days[0].hours[0].unit: There is no unit "radoi"; did you mean `radio`?',
  ],
  [
    'a day with a kind that nothing has',
    (boat) => {
      boat.days = [{ id: 'weekend', name: 'Weekend', like: 'anchor', hours: [{ kind: 'radra', hours: 4 }] }];
    },
    'days[0].hours[0].kind: There is no kind "radra"; did you mean `radar`?',
  ],
  [
    'hours given twice',
    (boat) => {
      const hours = [4, 5].map((each) => ({ unit: 'radio', hours: each }));
      boat.days = [{ id: 'weekend', name: 'Weekend', like: 'anchor', hours }];
    },
    'days[0].hours[1]: The hours of the unit "radio" are given twice.',
  ],
  [
    'a day called like one that every boat has',
    (boat) => {
      boat.days = [{ id: 'alongside', name: 'In the berth', like: 'alongside', hours: [] }];
    },
    'days[0].id: "alongside" is a day that every boat has.',
  ],
  [
    'a source chosen from a port that is not there',
    (boat) => {
      boat.sources = [{ reading: 'position', primary: 'gnss.n2x' }];
    },
    'sources[0].primary: There is no port "n2x" of "gnss"; did you mean `n2k`?',
  ],
  [
    'a source chosen at a unit that is not there',
    (boat) => {
      boat.sources = [{ reading: 'position', at: 'radoi', primary: 'gnss.n2k' }];
    },
    'sources[0].at: There is no unit "radoi"; did you mean `radio`?',
  ],
  [
    'two sources chosen for one reading',
    (boat) => {
      boat.sources = ['gnss.n2k', 'compass.n2k'].map((primary) => ({ reading: 'position', primary }));
    },
    'sources[1]: The source of position is chosen twice for the same place.',
  ],
  [
    'a need at a unit that is not there',
    (boat) => {
      boat.needs.push({ reading: 'depth', at: 'plotter', must: true });
    },
    'needs[3].at: There is no unit "plotter".',
  ],
  [
    'an instance at a port that is not there',
    (boat) => {
      for (const unit of boat.kit.slice(0, 1)) unit.instances = [{ port: 'n3k', reading: 'heading', instance: 1 }];
    },
    'kit[0].instances[0].port: There is no port "n3k" of "compass"; did you mean `n2k`?',
  ],
  [
    'guests on a socket that is no wifi',
    (boat) => {
      if (boat.kit[0] !== undefined) boat.kit[0].remote = { guests: 'n2k' };
    },
    'kit[0].remote.guests: There is no wifi port "n2k" of "compass".',
  ],
  [
    'an instance given twice',
    (boat) => {
      const entry = { port: 'n2k', reading: 'heading' } as const;
      for (const unit of boat.kit.slice(0, 1)) unit.instances = [1, 2].map((instance) => ({ ...entry, instance }));
    },
    'kit[0].instances[1]: The instance of heading at port "n2k" is given twice.',
  ],
  [
    'a pinned layout of a bus that is not there',
    (boat) => {
      boat.pins = { layouts: { ship: { grade: 'mid', walk: [{ place: 'helm', tees: [] }], state: 'fixed' } } };
    },
    'pins.layouts.ship: There is no bus "ship".',
  ],
  [
    'a pinned layout through a way that is not there',
    (boat) => {
      const walk = [
        { place: 'helm', tees: [] },
        { place: 'locker', via: 'helm-locker', tees: [] },
      ];
      boat.pins = { layouts: { nav: { grade: 'mid', walk, state: 'fixed' } } };
    },
    'pins.layouts.nav.walk[1].via: There is no way "helm-locker".',
  ],
  [
    'a settled route by a way that is not there',
    (boat) => {
      boat.pins = { routes: { 'feed:radio.supply~main-panel': { ways: ['locker-mast', 'mast-bow'], state: 'fixed' } } };
    },
    'pins.routes["feed:radio.supply~main-panel"].ways[1]: There is no way "mast-bow".',
  ],
  [
    'a boat steered from a place that is not there',
    (boat) => {
      boat.steering = [{ place: 'flybridge', by: 'wheel', letsGo: [] }];
    },
    'steering[0].place: There is no place "flybridge".',
  ],
  [
    'a switch at a place that is not there',
    (boat) => {
      boat.steering = [{ place: 'helm', by: 'wheel', letsGo: [{ how: 'hard-wired-switch', at: 'hlem' }] }];
    },
    'steering[0].letsGo[0].at: There is no place "hlem"; did you mean `helm`?',
  ],
  [
    'a breaker that is not there',
    (boat) => {
      boat.steering = [{ place: 'helm', by: 'wheel', letsGo: [{ how: 'breaker', circuit: 'main-panel.pilot' }] }];
    },
    'steering[0].letsGo[0].circuit: There is no circuit "pilot" of "main-panel".',
  ],
  [
    'a drive output at a port that is not there',
    (boat) => {
      for (const sheet of boat.sheets.slice(0, 1))
        sheet.driveOutput = { port: 'motor', works: ['reversing-motor'], runA: 5 };
    },
    'sheets[0].driveOutput.port: The sheet "converter-0183" has no port "motor".',
  ],
])('%s is refused', (_, recipe, expected) => {
  expect(told(recipe)).toEqual([expected]);
});

test.each<[string, Partial<Boat['cables'][number]>, string]>([
  ['from a place that is not there', { from: { place: 'bow' } }, 'cables[0].from.place: There is no place "bow".'],
  [
    'to a plug that is not there',
    { to: { place: 'helm', at: 'radio.wire' } },
    'cables[0].to.at: There is no plug "wire" of "radio"; did you mean `wires`?',
  ],
  [
    'to a circuit that is not there',
    { to: { place: 'locker', at: 'main-panel.x' } },
    'cables[0].to.at: There is no circuit "x" of "main-panel".',
  ],
  [
    'to a bank that is not there',
    { to: { place: 'locker', at: 'starter' } },
    'cables[0].to.at: There is no bank, panel or bus "starter".',
  ],
  ['through a way that is not there', { ways: ['locker-bow'] }, 'cables[0].ways[0]: There is no way "locker-bow".'],
  [
    'for a join that is not there',
    { serves: 'radio-heading' },
    'cables[0].serves: There is no join, bus or circuit "radio-heading".',
  ],
])('a cable %s is refused', (_, fields, expected) => {
  const cable: Boat['cables'][number] = {
    id: 'old-pair',
    kind: 'pair',
    from: { place: 'locker', at: 'main-panel.helm-circuit' },
    to: { place: 'helm', at: 'radio.wires' },
    serves: 'radio-position',
    ways: ['locker-helm'],
    length: { valueM: 4, how: 'guessed' },
    diameterMm: 5,
    condition: 'good',
    fate: 'stays',
  };
  expect(told((boat) => boat.cables.push(cable))).toEqual([]);
  expect(told((boat) => boat.cables.push({ ...cable, ...fields }))[0]).toContain(expected.slice(0, -1));
});
