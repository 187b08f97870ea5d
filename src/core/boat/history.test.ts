import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type EditId, edits } from './edits/index.ts';
import { aFullBoat } from './full-boat.test-helper.ts';
import { applyEdit, applyEdits, redo, undo } from './history.ts';
import { readBoat } from './read-boat.ts';
import { type History, startHistory } from './start-history.ts';
import { UserError } from './user-error.ts';
import { writeBoat } from './write-boat.ts';

const full = aFullBoat();
const unit = fc.constantFrom(...full.kit.map((entry) => entry.id), 'nobody');
const reading = fc.constantFrom('heading', 'position', 'depth', 'engine');
const optional = <Value>(arbitrary: fc.Arbitrary<Value>) => fc.option(arbitrary, { nil: undefined });
const port = fc.constantFrom(
  ...full.kit.flatMap((entry) =>
    (full.sheets.find((sheet) => sheet.id === entry.sheet)?.ports ?? []).map(({ id }) => `${entry.id}.${id}`),
  ),
  'gnss.nothing',
);
const finding = fc.constantFrom('needs/missing depth', 'ways/assumed helm-mast', 'power/drop display');

const withoutAbsent = (given: object): object =>
  Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));

const place = fc.constantFrom(...full.places.map((entry) => entry.id), 'halfway', 'nowhere');
const way = fc.constantFrom(...full.ways.map((entry) => entry.id), 'helm-mast-2', 'spare-way', 'no-way');
const cable = fc.constantFrom(...full.cables.map((entry) => entry.id), 'no-cable');
const view = fc.constantFrom('side', 'top');
const metres = optional(fc.integer({ min: -20, max: 80 }).map((tenths) => tenths / 10));

const panelId = fc.constantFrom(...full.supply.panels.map((entry) => entry.id), 'no-panel');
const circuitId = fc.constantFrom(
  ...full.supply.panels.flatMap(({ circuits }) => circuits.map((entry) => entry.id)),
  'no-circuit',
);
const fedFrom = fc.constantFrom(...[...full.supply.banks, ...full.supply.panels].map((entry) => entry.id), 'no-bank');

const params: Readonly<Record<EditId, fc.Arbitrary<object>>> = {
  'accept-finding': fc.record({ finding, reason: fc.constantFrom('Seen.', 'Known.') }),
  'add-bank': fc.record({
    id: fc.constantFrom('more', 'nav'),
    place,
    chemistry: fc.constantFrom('agm', 'gel'),
    nominalV: fc.constantFrom(12, 24),
    capacityAh: fc.constantFrom(80, 200),
    for: fc.constantFrom('house', 'start'),
  }),
  'add-cable': fc.record({
    id: fc.constantFrom('old-feed', 'old-log'),
    kind: fc.constant('feed'),
    from: fc.record({ place }),
    to: fc.record({ place }),
    ways: fc.tuple(way),
    length: fc.constant({ valueM: 2, how: 'guessed' }),
    diameterMm: fc.constant(8),
    condition: fc.constant('untested'),
    fate: fc.constant('stays'),
  }),
  'add-panel': fc.record({ id: fc.constantFrom('more', 'nav'), place, from: fedFrom, circuits: fc.constant([]) }),
  'add-place': fc.record({
    id: fc.constantFrom('halfway', 'helm'),
    name: fc.constant('halfway'),
    xM: fc.integer({ min: 0, max: 8 }),
    yM: fc.constant(0),
    zM: fc.constant(1),
    exposure: fc.constant('dry'),
    reach: fc.constant('open'),
    tees: fc.boolean(),
  }),
  'add-way': fc.record({ id: fc.constantFrom('spare-way', 'helm-mast'), ends: fc.tuple(place, place) }),
  'change-bank': fc
    .record({ bank: fedFrom, place: optional(place), capacityAh: optional(fc.constantFrom(80, 200)) })
    .map(withoutAbsent),
  'change-cable': fc.record({ cable, condition: fc.constantFrom('good', 'bad'), ways: optional(fc.tuple(way)) }),
  'change-circuit': fc
    .record({
      panel: panelId,
      circuit: circuitId,
      ratingA: optional(fc.constantFrom(3, 10)),
      feeds: optional(
        fc.constantFrom(
          [],
          ['no-unit.dc'],
          full.buses.map((entry) => entry.id),
        ),
      ),
    })
    .map(withoutAbsent),
  'change-panel': fc
    .record({ panel: panelId, from: optional(fedFrom), freeWays: optional(fc.constantFrom(0, 3)) })
    .map(withoutAbsent),
  'change-place': fc.record({ place, tees: optional(fc.boolean()), spares: optional(fc.nat(2)) }),
  'change-way': fc.record({
    way,
    kind: optional(fc.constantFrom('open', 'tray')),
    forget: optional(fc.constantFrom(['bore'], ['near', 'allows'])),
  }),
  'join-ways': fc.record({ place }),
  'move-places': fc.record({
    places: fc.array(fc.record({ place, xM: metres, yM: metres, zM: metres }).map(withoutAbsent), {
      minLength: 1,
      maxLength: 3,
    }),
  }),
  'remove-bank': fc.record({ bank: fedFrom }),
  'remove-cable': fc.record({ cable }),
  'remove-circuit': fc.record({ panel: panelId, circuit: circuitId }),
  'remove-panel': fc.record({ panel: panelId }),
  'remove-place': fc.record({ place }),
  'remove-way': fc.record({ way }),
  'split-way': fc.record({
    way,
    place: fc
      .record({ id: fc.constantFrom('halfway', 'second-halfway'), name: fc.constant('halfway'), xM: metres })
      .map(withoutAbsent),
  }),
  'add-circuit': fc.record({
    panel: fc.constantFrom(...full.supply.panels.map((entry) => entry.id), 'no-panel'),
    circuit: fc.record({
      id: fc.constantFrom('more', 'nav'),
      ratingA: fc.constantFrom(3, 10),
      kind: fc.constant('breaker'),
      feeds: fc.constantFrom([], ['no-unit.dc']),
    }),
  }),
  'add-need': fc.record({ reading, at: unit, must: fc.boolean(), instance: optional(fc.nat(2)) }),
  'add-sheet': fc.record({
    sheet: fc.constantFrom(...full.sheets, ...full.sheets.map((own) => ({ ...own, id: 'own' }))),
  }),
  'add-unit': fc.record({
    id: fc.constantFrom('new-wind', 'gnss', 'second-gnss'),
    name: fc.constant('A new one'),
    sheet: fc.constantFrom('wind-sensor-bus', 'gnss-antenna-bus', ...full.sheets.map((entry) => entry.id), 'no-sheet'),
    fate: fc.constant('comes'),
    place: fc.constantFrom(...full.places.map((entry) => entry.id), 'nowhere'),
  }),
  'copy-sheet': fc.record({
    units: fc.uniqueArray(unit, { minLength: 1, maxLength: 2 }),
    as: fc.constantFrom('own-sheet', ...full.sheets.map((entry) => entry.id)),
    sourceNote: optional(fc.constant('Page 12.')),
  }),
  'name-unit': fc.record({ unit, name: fc.constantFrom('Another name', '') }),
  'set-sheet': fc.record({
    sheet: fc.constantFrom(
      ...full.sheets.map((own) => ({ ...own, name: 'As the manual has it', source: 'manual' as const })),
      ...full.sheets.map((own) => ({ ...own, ports: [] })),
    ),
  }),
  'change-need': fc.record({ reading, at: unit, must: fc.boolean(), everyMs: fc.constantFrom(100, 1000) }),
  'change-sheet': fc.record({
    unit,
    path: fc.constantFrom('ports.n2k.len', 'ports.n2k.baud', 'nothing.here'),
    value: fc.constantFrom(1, 2, 'three'),
    how: fc.constantFrom('manual', 'seen'),
  }),
  'choose-source': fc.record({ reading, at: optional(unit), instance: optional(fc.nat(2)), primary: port }),
  'confirm-join': fc.record({
    join: fc.constantFrom(...full.joins.map((entry) => entry.id), 'no-join'),
    by: fc.constant('the yard'),
    source: fc.constant('its manual'),
    version: fc.constant('2'),
  }),
  'feed-port': fc.record({
    port: fc.constantFrom('radio.dc', 'display.dc', 'radio.gps-in', 'nobody.dc'),
    circuit: fc.constantFrom('main-panel.bus-circuit', 'main-panel.helm-circuit', 'main-panel.none', 'no-panel.c1'),
  }),
  'forbid-join': fc.record({
    kind: fc.constant('nmea2000' as const),
    bus: fc.constantFrom(...full.buses.map((entry) => entry.id), 'no-bus'),
    members: fc
      .tuple(unit, fc.constantFrom('n2k', 'no-port'))
      .map(([kit, own]) => [{ kit, port: own, as: 'both' as const }]),
  }),
  'join-bus': fc.record({ port, bus: fc.constantFrom(...full.buses.map((entry) => entry.id), 'no-bus') }),
  'join-ports': fc.record({ from: port, to: port }),
  'let-source-go': fc.record({ reading, at: optional(unit), instance: optional(fc.nat(2)) }),
  'note-aboard': fc
    .record({
      unit,
      serial: optional(fc.constantFrom('12', '13')),
      settings: optional(
        fc.uniqueArray(
          fc
            .record({ name: fc.constantFrom('keel offset', 'alarms', ''), value: optional(fc.constantFrom('1', '2')) })
            .map(withoutAbsent),
          { minLength: 1, maxLength: 2 },
        ),
      ),
      copied: optional(fc.boolean()),
      forget: optional(fc.constantFrom(['serial'], ['copied', 'software'])),
    })
    .map(withoutAbsent),
  'see-plug': fc
    .record({
      unit,
      plug: fc.constantFrom(...full.sheets.flatMap(({ plugs }) => plugs.map(({ id }) => id)), 'no-plug'),
      connector: optional(fc.constantFrom('micro-c', 'leads')),
      gender: optional(fc.constantFrom('male', 'female')),
      colours: optional(fc.constant([{ label: 'out A', colour: 'white' }])),
    })
    .map(withoutAbsent),
  'move-unit': fc.record({ unit, place: fc.constantFrom(...full.places.map((entry) => entry.id)) }),
  'add-heard': fc.record({
    bus: fc.constantFrom('nav', 'second-nav', 'mast-foot'),
    port: fc.constantFrom('n2k', 'no-port'),
    sheets: fc.constant([]),
    units: fc.array(
      fc.record({
        id: fc.constantFrom('heard', 'heard-too'),
        name: fc.constant('Heard'),
        sheet: fc.constantFrom(...full.sheets.map((entry) => entry.id)),
        fate: fc.constant('stays' as const),
        place,
      }),
      { minLength: 1, maxLength: 2 },
    ),
  }),
  'add-photo': fc.record({
    of: fc.constantFrom(...full.kit.map((entry) => entry.id), 'nothing'),
    shows: fc.constantFrom('front', 'label'),
    picture: fc.constant({ hash: '12'.repeat(32), type: 'jpeg', widthPx: 20, heightPx: 10 }),
  }),
  'remove-photo': fc.record({
    of: fc.constantFrom('display', 'nothing'),
    shows: fc.constantFrom('front', 'label'),
    hash: fc.constantFrom('ab'.repeat(32), 'ef'.repeat(32), '12'.repeat(32)),
  }),
  'set-negative': fc.record({ place }),
  'add-bus': fc.record({
    id: fc.constantFrom('second', 'nav'),
    name: fc.constant('Second bus'),
    protocol: fc.constant('nmea2000'),
  }),
  'allow-tees': fc.record({
    place: fc.constantFrom(...full.places.map((entry) => entry.id), 'nowhere'),
    tees: fc.boolean(),
  }),
  'change-bus': fc.record({ port, bus: fc.constantFrom(...full.buses.map((entry) => entry.id), 'second', 'no-bus') }),
  'set-grade': fc.record({
    bus: fc.constantFrom(...full.buses.map((entry) => entry.id), 'no-bus'),
    grade: optional(fc.constantFrom('light', 'heavy')),
  }),
  'pin-layout': fc.record({
    bus: fc.constantFrom(...full.buses.map((entry) => entry.id), 'no-bus'),
    grade: fc.constantFrom('light', 'mid'),
    walk: fc.constantFrom(...full.places.map((entry) => [{ place: entry.id, tees: [] }])),
    state: fc.constantFrom('fixed', 'fitted'),
  }),
  'pin-route': fc.record({
    line: fc.constantFrom('pair:converter.wires~radio.wires', 'feed:radio.supply~main'),
    ways: fc.constantFrom(...full.ways.map((entry) => [entry.id]), ['no-way']),
    state: fc.constantFrom('fixed', 'bought'),
  }),
  'remove-day': fc.record({ day: fc.constantFrom('weekend', 'passage', 'no-day') }),
  'remove-need': fc.record({ reading, at: unit, instance: optional(fc.nat(2)) }),
  'remove-underlay': fc.record({ view }),
  'remove-unit': fc.record({ unit: fc.constantFrom('nobody', 'radio', 'gnss') }),
  'reopen-finding': fc.record({ finding }),
  'restore-boat': fc.constantFrom({ boat: full }, { boat: { ...full, name: 'Another' } }),
  'set-day': fc.record({
    id: fc.constantFrom('weekend', 'anchor', 'nav'),
    name: fc.constant('A day'),
    like: fc.constantFrom('anchor', 'alongside'),
    hours: fc.constantFrom([], [{ unit: 'radio', hours: 3 }], [{ unit: 'nobody', hours: 3 }]),
    chargedAfter: optional(fc.integer({ min: 1, max: 3 })),
  }),
  'set-fate': fc.record({
    unit,
    fate: fc.constantFrom('stays', 'goes', 'comes'),
    phase: optional(fc.integer({ min: 1, max: 3 })),
  }),
  'set-instance': fc.record({ port, reading, instance: fc.nat(3) }),
  'note-order': fc
    .record({
      item: fc.constantFrom('micro-tee', 'light-drop-2000mm', 'Not an item'),
      supplier: optional(fc.constant('the chandler')),
      leadDays: optional(fc.nat(30)),
      forget: optional(fc.constantFrom(['count'], ['supplier', 'orderBy'])),
    })
    .map(withoutAbsent),
  'set-order': fc.record({
    item: fc.constantFrom('micro-tee', 'light-drop-2000mm', 'Not an item'),
    state: fc.constantFrom('have', 'ordered', 'arrived'),
    leadDays: optional(fc.nat(30)),
  }),
  'set-price': fc.oneof(
    fc.record({ of: fc.constant('hour'), each: fc.nat(20_000) }),
    fc
      .record({
        of: fc.constant('item'),
        item: fc.constantFrom('micro-tee', 'Not an item'),
        each: optional(fc.nat(900)),
      })
      .map(withoutAbsent),
  ),
  'set-quote': fc
    .record({
      by: optional(fc.constantFrom('professional', 'owner')),
      contingencyPct: optional(fc.constantFrom(0, 30, 900)),
      hours: optional(fc.constant([{ task: 'survey', eachH: 1.5, reason: 'A small boat.' }])),
      exclusions: optional(fc.constant(['Painting the dash.'])),
    })
    .map(withoutAbsent),
  'set-rate': fc.record({
    port,
    message: fc.constantFrom(127250, 129025, 'RMC', 'ZZZ'),
    everyMs: optional(fc.constantFrom(100, 1000)),
  }),
  'set-underlay': fc.record({
    view,
    picture: fc.record({
      hash: fc.constantFrom('ab'.repeat(32), 'ef'.repeat(32), 'no hash'),
      type: fc.constant('png'),
      widthPx: fc.constant(100),
      heightPx: fc.constant(50),
    }),
    from: fc.constant({ xPx: 0, yPx: 0, alongM: 0, acrossM: 0 }),
    to: fc.record({
      xPx: fc.constantFrom(100, 0),
      yPx: fc.constant(0),
      alongM: fc.constant(8),
      acrossM: fc.constant(0),
    }),
    hidden: optional(fc.boolean()),
  }),
  'set-waters': fc.record({ waters: optional(fc.constantFrom('quiet', 'harbour', 'ocean')) }),
  'set-remote': fc.record({
    unit,
    remote: optional(
      fc.constantFrom<object[]>(
        {},
        { writes: 'may-write', heldBy: ['owner'] },
        { guests: 'air' },
        { guests: 'n2k' },
        { password: 'a secret' },
      ),
    ),
  }),
  'unpin-layout': fc.record({ bus: fc.constantFrom(...full.buses.map((entry) => entry.id), 'no-bus') }),
  'unpin-route': fc.record({ line: fc.constantFrom('pair:converter.wires~radio.wires', 'feed:radio.supply~main') }),
  'tape-length': fc.record({
    way: fc.constantFrom(...full.ways.map((entry) => entry.id)),
    length: fc.record({ valueM: fc.integer({ min: 1, max: 9 }), how: fc.constantFrom('taped', 'guessed') }),
  }),
};

// reason: the keys of a record of every edit are the ids of edits
const ids = Object.keys(params) as EditId[];
const anEdit = fc.constantFrom(...ids).chain((id) => params[id].map((given) => ({ id, given })));

/** The history with one more edit, or as it was where the edit is refused. */
const tried = (history: History, { id, given }: { id: EditId; given: object }): History => {
  try {
    // reason: parameters made at random are for the edit itself to check
    return applyEdit(history, id, withoutAbsent(given) as never);
  } catch (error) {
    if (error instanceof UserError) return history;
    throw error;
  }
};

test('200 edits taken back one by one, and made again, go through the same boats to the byte', () => {
  fc.assert(
    fc.property(fc.array(anEdit, { minLength: 200, maxLength: 200 }), (made) => {
      let history = startHistory(full);
      const texts = [writeBoat(history.boat)];
      for (const edit of made) {
        const next = tried(history, edit);
        if (next !== history) texts.push(writeBoat(next.boat));
        history = next;
      }
      expect(history.done.length).toBe(texts.length - 1);
      for (const text of texts.toReversed()) {
        expect(writeBoat(history.boat)).toBe(text);
        history = undo(history);
      }
      expect(undo(history)).toBe(history);
      for (const text of texts) {
        expect(writeBoat(history.boat)).toBe(text);
        history = redo(history);
      }
      expect(redo(history)).toBe(history);
    }),
    { numRuns: 3 },
  );
});

test('whatever edits are made, the boat can be saved and read again', () => {
  fc.assert(
    fc.property(fc.array(anEdit, { maxLength: 12 }), (made) => {
      const { boat } = made.reduce(tried, startHistory(full));
      expect(readBoat(writeBoat(boat))).toEqual(boat);
    }),
    { numRuns: 40 },
  );
});

test('a new edit after taking one back leaves nothing to make again', () => {
  const first = applyEdit(startHistory(full), 'move-unit', { unit: 'gnss', place: 'helm' });
  const second = applyEdit(undo(first), 'move-unit', { unit: 'radio', place: 'locker' });
  expect(second.undone).toEqual([]);
  expect(redo(second)).toBe(second);
  expect(second.done.map((step) => step.title)).toEqual(['Move Old radio to electrical locker.']);
});

test('an edit that changes nothing is no step to take back', () => {
  const start = startHistory(full);
  expect(applyEdit(start, 'move-unit', { unit: 'gnss', place: 'stern-rail' })).toBe(start);
});

test('an edit is one step however much it changes, and leaves the boat before it alone', () => {
  const before = writeBoat(full);
  const history = applyEdit(startHistory(full), 'remove-unit', { unit: 'radio' });
  expect(history.done).toHaveLength(1);
  expect(writeBoat(full)).toBe(before);
  expect(edits['remove-unit'].apply(full, { unit: 'radio' })).toEqual(history.boat);
});

test('several edits are one step: made together, said together, taken back together', () => {
  const start = startHistory(full);
  const both = applyEdits(start, [
    { edit: 'move-unit', params: { unit: 'radio', place: 'locker' } },
    { edit: 'remove-unit', params: { unit: 'gnss' } },
  ]);
  expect(both.done.map((step) => step.title)).toEqual([
    'Move Old radio to electrical locker. Take GNSS on the stern rail out of the boat.',
  ]);
  const alone = applyEdit(applyEdit(start, 'move-unit', { unit: 'radio', place: 'locker' }), 'remove-unit', {
    unit: 'gnss',
  });
  expect(writeBoat(both.boat)).toBe(writeBoat(alone.boat));
  expect(writeBoat(undo(both).boat)).toBe(writeBoat(full));
});

test('of several edits all are made or none', () => {
  const start = startHistory(full);
  const calls: Parameters<typeof applyEdits>[1] = [
    { edit: 'move-unit', params: { unit: 'radio', place: 'locker' } },
    { edit: 'move-unit', params: { unit: 'nobody', place: 'locker' } },
  ];
  expect(() => applyEdits(start, calls)).toThrow(UserError);
  expect(writeBoat(start.boat)).toBe(writeBoat(full));
});

test('a step may have a title of its own', () => {
  const params = { unit: 'radio', place: 'locker' };
  const history = applyEdits(startHistory(full), [{ edit: 'move-unit', params }], 'Put the radio out of the wet.');
  expect(history.done.at(-1)?.title).toBe('Put the radio out of the wet.');
});
