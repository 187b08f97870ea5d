import { expect, test } from 'vitest';
import { typicalSheets } from '../../facts/sheets/index.ts';
import { aBoat } from '../a-boat.test-helper.ts';
import type { Boat } from '../boat-schema.ts';
import { UserError } from '../user-error.ts';
import { type EditId, edits } from './index.ts';

const tern = aBoat().boat;

const refusalOf = (id: EditId, params: unknown, boat: Boat = tern): UserError | undefined => {
  try {
    edits[id].apply(boat, params);
    return undefined;
  } catch (error) {
    if (error instanceof UserError) return error;
    throw error;
  }
};

test('a join that is forbidden stands in the file so, and is no join', () => {
  const members = [
    { kit: 'converter', port: 'out', as: 'talk' as const },
    { kit: 'radio', port: 'gps-in', as: 'listen' as const },
  ];
  const after = edits['forbid-join'].apply(tern, { kind: 'nmea0183', members });
  expect(after.joins.at(-1)).toEqual({ id: 'never-converter-radio', kind: 'nmea0183', members, hold: 'never' });
});

test('every edit is listed under its own id', () => {
  for (const [id, edit] of Object.entries(edits)) expect(edit.id).toBe(id);
});

test('a taped length takes the place of a guess', () => {
  const length = { valueM: 2.35, how: 'taped' } as const;
  const boat = edits['tape-length'].apply(tern, { way: 'locker-helm', length });
  expect(boat.ways.find((way) => way.id === 'locker-helm')?.length).toEqual(length);
  expect(edits['tape-length'].title({ way: 'locker-helm', length }, tern)).toBe(
    'From electrical locker to helm dash it is 2.35 m, taped.',
  );
});

test('a route that is settled and let go again leaves the file as it was; one by a way that is none is refused', () => {
  const line = 'pair:converter.wires~radio.wires';
  const pinned = edits['pin-route'].apply(tern, { line, ways: ['locker-mast', 'helm-mast'], state: 'fixed' });
  expect(pinned.pins?.routes?.[line]).toEqual({ ways: ['locker-mast', 'helm-mast'], state: 'fixed' });
  expect(edits['unpin-route'].apply(pinned, { line })).toEqual(tern);
  expect(refusalOf('pin-route', { line, ways: ['no-such-way'], state: 'fixed' })?.says).toContain('no-such-way');
});

test('a layout that is settled and let go again leaves the file as it was', () => {
  const layout = { grade: 'light', walk: [{ place: 'helm', tees: [] }], state: 'fixed' } as const;
  const pinned = edits['pin-layout'].apply(tern, { bus: 'nav', ...layout });
  expect(pinned.pins?.layouts?.nav).toEqual(layout);
  expect(edits['unpin-layout'].apply(pinned, { bus: 'nav' })).toEqual(tern);
  expect(refusalOf('pin-layout', { bus: 'no-bus', ...layout })?.says).toContain('no-bus');
});

test('a bus of heavier cable, a place for tees and a second bus with a unit on it', () => {
  expect(edits['set-grade'].apply(tern, { bus: 'nav', grade: 'heavy' }).buses[0]?.grade).toBe('heavy');
  expect(edits['set-grade'].apply(tern, { bus: 'nav' }).buses[0]).not.toHaveProperty('grade');
  const place = tern.places.find(({ tees }) => !tees)?.id ?? '';
  const allowed = edits['allow-tees'].apply(tern, { place, tees: true });
  expect(allowed.places.find(({ id }) => id === place)?.tees).toBe(true);
  const second = edits['add-bus'].apply(tern, { id: 'second', name: 'Second bus', protocol: 'nmea2000' });
  const moved = edits['change-bus'].apply(second, { port: 'gnss.n2k', bus: 'second' });
  const busesOf = (boat: Boat) =>
    boat.joins.flatMap(({ bus, members }) => (members.some(({ kit }) => kit === 'gnss') ? [bus] : []));
  expect([busesOf(tern), busesOf(moved)]).toEqual([['nav'], ['second']]);
  expect(refusalOf('add-bus', { id: 'nav', name: 'Twice', protocol: 'nmea2000' })?.says).toContain('nav');
});

test('a unit that comes in the second phase says so, and one of the first phase says nothing', () => {
  const later = edits['set-fate'].apply(tern, { unit: 'gnss', fate: 'comes', phase: 2 });
  expect(later.kit.find((unit) => unit.id === 'gnss')?.phase).toBe(2);
  const now = edits['set-fate'].apply(later, { unit: 'gnss', fate: 'comes' });
  expect(Object.hasOwn(now.kit.find((unit) => unit.id === 'gnss') ?? {}, 'phase')).toBe(false);
});

test('what is known of the wifi of a unit is said, and forgotten', () => {
  const said = edits['set-remote'].apply(tern, { unit: 'gnss', remote: { writes: 'listen-only' } });
  expect(said.kit.find((unit) => unit.id === 'gnss')?.remote).toEqual({ writes: 'listen-only' });
  expect(edits['set-remote'].apply(said, { unit: 'gnss' })).toEqual(tern);
});

test('a finding is accepted with a reason, again with another, and opened again', () => {
  const finding = 'power/drop display';
  const once = edits['accept-finding'].apply(tern, { finding, reason: 'Rarely used.' });
  const twice = edits['accept-finding'].apply(once, { finding, reason: 'Only by day.' });
  expect(twice.accepted).toEqual([{ finding, reason: 'Only by day.' }]);
  expect(edits['reopen-finding'].apply(twice, { finding })).toEqual(tern);
  expect(refusalOf('reopen-finding', { finding })?.says).toBe(
    'The finding "power/drop display" has not been accepted.',
  );
});

test('an item of the shopping list stands in one state, and a day that is none is refused', () => {
  const ordered = edits['set-order'].apply(tern, { item: 'micro-tee', state: 'ordered', leadDays: 14 });
  const arrived = edits['set-order'].apply(ordered, { item: 'micro-tee', state: 'arrived' });
  expect(arrived.orders).toEqual([{ item: 'micro-tee', state: 'arrived' }]);
  expect(edits['set-order'].title({ item: 'micro-tee', state: 'ordered' }, tern)).toBe('micro-tee is ordered.');
  expect(refusalOf('set-order', { item: 'micro-tee', state: 'ordered', orderBy: '31.3.2027' })?.whatToDo).toContain(
    'year-month-day',
  );
});

test('a need is added once and taken out again', () => {
  const need = { reading: 'depth', at: 'display', must: true } as const;
  const more = edits['add-need'].apply(tern, need);
  expect(more.needs.at(-1)).toEqual(need);
  expect(refusalOf('add-need', need, more)?.says).toBe('The boat already wants depth at display.');
  expect(refusalOf('add-need', { ...need, instance: 1 }, more)).toBeUndefined();
  expect(edits['remove-need'].apply(more, { reading: 'depth', at: 'display' })).toEqual(tern);
  expect(refusalOf('remove-need', { reading: 'depth', at: 'display' })?.says).toBe(
    'The boat does not want depth at display.',
  );
});

test('a unit that is taken out leaves its needs, its joins, its circuit and its cables', () => {
  const withCable = aBoat().change((boat) => {
    boat.cables.push({
      id: 'old-pair',
      kind: 'pair',
      from: { place: 'locker', at: 'converter.wires' },
      to: { place: 'helm', at: 'radio.wires' },
      serves: 'radio-position',
      ways: ['locker-helm'],
      length: { valueM: 4, how: 'guessed' },
      diameterMm: 5,
      condition: 'good',
      fate: 'stays',
    });
  }).boat;
  const boat = edits['remove-unit'].apply(withCable, { unit: 'radio' });
  expect(boat.kit.map((unit) => unit.id)).toEqual(['compass', 'converter', 'display', 'gnss']);
  expect(boat.needs.map((need) => need.at)).toEqual(['display', 'display']);
  expect(boat.joins.map((join) => join.id)).toEqual(['nav-join']);
  expect(boat.supply.panels[0]?.circuits[1]?.feeds).toEqual(['display.dc']);
  expect(boat.cables[0]?.to).toEqual({ place: 'helm' });
  expect(boat.cables[0]?.from.at).toBe('converter.wires');
  expect(boat.cables[0]?.serves).toBeUndefined();
});

test('a bus keeps its join when one of its units is taken out', () => {
  const boat = edits['remove-unit'].apply(tern, { unit: 'gnss' });
  expect(boat.joins[0]?.members.map((member) => member.kit)).toEqual(['compass', 'converter', 'display']);
});

test('a unit by a typical sheet brings the sheet into the file, once', () => {
  const wind = {
    id: 'wind',
    name: 'Wind sensor',
    sheet: 'wind-sensor-bus',
    fate: 'comes',
    place: 'mast-base',
  } as const;
  const one = edits['add-unit'].apply(tern, wind);
  const two = edits['add-unit'].apply(one, { ...wind, id: 'second-wind' });
  expect(two.kit.slice(-2).map((unit) => unit.id)).toEqual(['wind', 'second-wind']);
  expect(two.sheets.filter((sheet) => sheet.id === 'wind-sensor-bus')).toHaveLength(1);
  expect(refusalOf('add-unit', wind, one)?.says).toBe(
    '"wind" is the id of a unit twice; an id names one thing in the whole file.',
  );
});

test('what is found out of a bank, of a panel and of the negatives is said, and the rest stays', () => {
  const [bank, panel] = [tern.supply.banks[0], tern.supply.panels[0]];
  const main = { kind: 'fuse', ratingA: 80 } as const;
  const after = edits['change-bank'].apply(tern, { bank: bank?.id, main });
  expect(after.supply.banks[0]).toEqual({ ...bank, main });
  expect(edits['change-panel'].apply(tern, { panel: panel?.id, freeWays: 2 }).supply.panels[0]).toEqual({
    ...panel,
    freeWays: 2,
  });
  expect(edits['set-negative'].apply(tern, { place: 'mast-base' }).supply.negativeAt).toBe('mast-base');
  expect(refusalOf('set-negative', { place: 'nowhere' })?.says).toContain('nowhere');
});

test('what a recording heard comes aboard with its sheets, on the backbone there is or on one made for it', () => {
  const [typical] = typicalSheets.filter(({ id }) => id === 'wind-sensor-bus');
  const sheet = { ...typical, id: 'heard-wind', source: 'recording' as const };
  const unit = { id: 'wind', name: 'Wind', sheet: 'heard-wind', fate: 'stays', place: 'mast-base' } as const;
  const heard = { bus: 'nav', port: 'n2k', sheets: [sheet], units: [unit] };
  const after = edits['add-heard'].apply(tern, heard);
  expect(after.kit.at(-1)).toEqual(unit);
  expect(after.joins.find(({ bus }) => bus === 'nav')?.members).toContainEqual({
    kit: 'wind',
    port: 'n2k',
    as: 'both',
  });
  const bare = edits['add-heard'].apply(aBoat().with({ joins: [] }).boat, { ...heard, bus: 'second' });
  expect(bare.buses.map(({ id }) => id)).toContain('second');
  expect(bare.joins.map(({ bus }) => bus)).toEqual(['second']);
  expect(refusalOf('add-heard', { ...heard, units: [] })?.says).toBeDefined();
});

test('a port put on a backbone joins those that are on it, and makes the first join where there is none', () => {
  const out = aBoat().change((boat) => {
    boat.joins[0]?.members.pop();
  }).boat;
  expect(edits['join-bus'].apply(out, { port: 'gnss.n2k', bus: 'nav' })).toEqual(tern);
  const bare = aBoat().with({ joins: [] }).boat;
  expect(edits['join-bus'].apply(bare, { port: 'gnss.n2k', bus: 'nav' }).joins).toEqual([
    {
      id: 'nav-join',
      kind: 'nmea2000',
      bus: 'nav',
      members: [{ kit: 'gnss', port: 'n2k', as: 'both' }],
      hold: 'fixed',
    },
  ]);
  expect(refusalOf('join-bus', { port: 'radio.gps-in', bus: 'nav' })?.says).toBe(
    'The join "nav-join" is nmea2000, and the port "radio.gps-in" is nmea0183.',
  );
});

test('a second listener is added to the join its talker speaks in', () => {
  const second = aBoat().add({
    kit: [{ id: 'radio-aft', name: 'Radio aft', sheet: 'fixed-radio', fate: 'stays', place: 'helm' }],
  }).boat;
  const boat = edits['join-ports'].apply(second, { from: 'converter.out', to: 'radio-aft.gps-in' });
  expect(boat.joins).toHaveLength(2);
  expect(boat.joins[1]?.members.map(({ kit, as }) => [kit, as])).toEqual([
    ['converter', 'talk'],
    ['radio', 'listen'],
    ['radio-aft', 'listen'],
  ]);
  const first = edits['join-ports'].apply(aBoat().change((draft) => draft.joins.pop()).boat, {
    from: 'converter.out',
    to: 'radio.gps-in',
  });
  expect(first.joins[1]?.id).toBe('converter-to-radio');
  expect(refusalOf('join-ports', { from: 'gnss.n2k', to: 'radio.gps-in' })?.says).toBe(
    'gnss.n2k is nmea2000 and radio.gps-in is nmea0183; they cannot be wired to each other.',
  );
});

test('a change of a sheet is for one unit, and a later one takes its place', () => {
  const path = 'ports.gps-in.baud';
  const once = edits['change-sheet'].apply(tern, { unit: 'radio', path, value: 38400, how: 'seen' });
  const twice = edits['change-sheet'].apply(once, { unit: 'radio', path, value: 4800, how: 'manual' });
  expect(twice.kit.find((unit) => unit.id === 'radio')?.changes).toEqual([{ path, value: 4800, how: 'manual' }]);
  expect(refusalOf('change-sheet', { unit: 'radio', path: 'ports.gps-inn.baud', value: 4800, how: 'seen' })?.says).toBe(
    'There is no `gps-inn` in `ports`; did you mean `gps-in`?',
  );
});

test('an instance number takes the place of the one the port had for that reading', () => {
  const port = 'compass.n2k';
  const once = edits['set-instance'].apply(tern, { port, reading: 'heading', instance: 1 });
  const twice = edits['set-instance'].apply(once, { port, reading: 'heading', instance: 2 });
  expect(twice.kit.find((unit) => unit.id === 'compass')?.instances).toEqual([
    { port: 'n2k', reading: 'heading', instance: 2 },
  ]);
});

test('a need can ask for less, and a join can be confirmed', () => {
  const need = { reading: 'heading', at: 'display', must: false, reference: 'magnetic' } as const;
  expect(edits['change-need'].apply(tern, need).needs[0]).toEqual(need);
  expect(refusalOf('change-need', { ...need, instance: 4 })?.says).toBe('The boat does not want heading 4 at display.');
  const confirmed = { by: 'the yard', source: 'manual, page 12', version: '2.1' };
  const boat = edits['confirm-join'].apply(tern, { join: 'radio-position', ...confirmed });
  expect(boat.joins.find((join) => join.id === 'radio-position')?.confirmed).toEqual(confirmed);
});

test.each<[string, EditId, unknown, string]>([
  [
    'a place that is not there',
    'move-unit',
    { unit: 'gnss', place: 'hlem' },
    'There is no place "hlem" in this boat; did you mean `helm`?',
  ],
  ['a unit that is not there', 'remove-unit', { unit: 'anchor' }, 'There is no unit "anchor" in this boat.'],
  [
    'a need at a unit that is not there',
    'add-need',
    { reading: 'depth', at: 'x', must: true },
    'There is no unit "x" in this boat.',
  ],
  [
    'a length that is no number',
    'tape-length',
    { way: 'locker-helm', length: { valueM: Number.NaN, how: 'taped' } },
    '`valueM` should be a number, not NaN.',
  ],
  [
    'a misspelt parameter',
    'move-unit',
    { unit: 'gnss', plaec: 'helm' },
    '`plaec` is not a name known here; did you mean `place`?',
  ],
  ['nothing at all', 'move-unit', undefined, 'This entry is missing.'],
])('%s is refused in a sentence', (_, id, params, says) => {
  expect(refusalOf(id, params)?.says).toBe(says);
});

test('a unit taken out leaves the days that name its hours', () => {
  const hours = [
    { unit: 'radio', hours: 4 },
    { kind: 'vhf-radio', hours: 10 },
  ];
  const boat = aBoat().with({ days: [{ id: 'weekend', name: 'Weekend', like: 'anchor', hours }] }).boat;
  const without = edits['remove-unit'].apply(boat, { unit: 'radio' });
  expect(without.days?.[0]?.hours).toEqual([{ kind: 'vhf-radio', hours: 10 }]);
});

test('a day of one’s own is set, set anew and taken out again; one called like a standard day is refused', () => {
  const day = { id: 'weekend', name: 'Weekend', like: 'anchor', hours: [{ unit: 'radio', hours: 4 }] } as const;
  const once = edits['set-day'].apply(tern, day);
  expect(once.days).toEqual([day]);
  const twice = edits['set-day'].apply(once, { ...day, chargedAfter: 2 });
  expect(twice.days).toEqual([{ ...day, chargedAfter: 2 }]);
  expect(edits['remove-day'].title({ day: 'weekend' }, twice)).toBe('No longer reckon with the day “Weekend”.');
  expect(edits['remove-day'].apply(twice, { day: 'weekend' })).toEqual(tern);
  expect(refusalOf('set-day', { ...day, id: 'anchor' })?.says).toBe('"anchor" is a day that every boat has.');
  expect(refusalOf('set-day', { ...day, hours: [{ unit: 'nobody', hours: 4 }] })?.says).toContain('nobody');
  expect(refusalOf('remove-day', { day: 'weekend' })?.says).toContain('weekend');
});

test('a source is chosen, chosen anew and let go again, and goes with the unit it came from', () => {
  const whole = { reading: 'heading', primary: 'compass.n2k' } as const;
  const chosen = edits['choose-source'].apply(tern, whole);
  expect(chosen.sources).toEqual([whole]);
  const own = { ...whole, at: 'display', primary: 'gnss.n2k' } as const;
  const both = edits['choose-source'].apply(edits['choose-source'].apply(chosen, whole), own);
  expect(both.sources).toEqual([whole, own]);
  expect(edits['remove-unit'].apply(both, { unit: 'gnss' }).sources).toEqual([whole]);
  expect(edits['let-source-go'].apply(chosen, { reading: 'heading' })).toEqual(tern);
  expect(refusalOf('let-source-go', { reading: 'depth' })?.says).toBe('No source of depth is chosen there.');
});

test('a port is fed from another circuit, and from that one only', () => {
  const moved = edits['feed-port'].apply(tern, { port: 'radio.dc', circuit: 'main-panel.bus-circuit' });
  expect(moved.supply.panels[0]?.circuits.map(({ feeds }) => feeds)).toEqual([['nav', 'radio.dc'], ['display.dc']]);
  expect(refusalOf('feed-port', { port: 'radio.dc', circuit: 'main-panel.none' })?.says).toContain('none');
});

test('a rate is set for one unit, set again, and goes back to its sheet', () => {
  const rateOf = (boat: Boat) => boat.kit.find(({ id }) => id === 'gnss')?.changes;
  const set = { port: 'gnss.n2k', message: 129025 } as const;
  const fast = edits['set-rate'].apply(tern, { ...set, everyMs: 500 });
  const slow = edits['set-rate'].apply(fast, { ...set, everyMs: 1000 });
  expect(rateOf(slow)).toEqual([{ path: 'ports.n2k.sends.129025.everyMs', value: 1000, how: 'seen' }]);
  expect(edits['set-rate'].apply(slow, set)).toEqual(tern);
  expect(edits['set-rate'].title({ ...set, everyMs: 500 }, tern)).toBe('gnss.n2k sends 129025 every 500 ms.');
  expect(refusalOf('set-rate', { port: 'gnss.n2k', message: 127505, everyMs: 500 })?.says).toContain('127505');
  expect(refusalOf('set-rate', { port: 'gnss.n2k', message: 'rmc', everyMs: 500 })).toBeDefined();
});

test('the rate of a message that is sent for several numbers is not set by half', () => {
  const twice = aBoat().sheet('gnss-receiver', (sheet) => {
    sheet.ports[0]?.sends?.push({ pgn: 127505, instance: 0 }, { pgn: 127505, instance: 1 });
  }).boat;
  expect(refusalOf('set-rate', { port: 'gnss.n2k', message: 127505, everyMs: 500 }, twice)?.says).toContain(
    'several times',
  );
});

test('waters are set, and taken back to the usual ones', () => {
  const quiet = edits['set-waters'].apply(tern, { waters: 'quiet' });
  expect(quiet.waters).toBe('quiet');
  expect(edits['set-waters'].apply(quiet, {})).toEqual(tern);
  expect(refusalOf('set-waters', { waters: 'ocean' })).toBeDefined();
});

test('units of one sheet get a copy of it that is their own and of the manual; the sheet itself stays', () => {
  const boat = edits['copy-sheet'].apply(tern, { units: ['gnss'], as: 'gnss-own', sourceNote: 'Manual, page 12.' });
  const own = boat.sheets.find(({ id }) => id === 'gnss-own');
  expect([own?.source, own?.sourceNote, own?.name]).toEqual(['manual', 'Manual, page 12.', 'GNSS receiver']);
  expect(boat.kit.find(({ id }) => id === 'gnss')?.sheet).toBe('gnss-own');
  expect(boat.sheets.find(({ id }) => id === 'gnss-receiver')).toEqual(
    tern.sheets.find(({ id }) => id === 'gnss-receiver'),
  );
  expect(refusalOf('copy-sheet', { units: ['gnss', 'display'], as: 'own' })?.says).toBe(
    'These units are not of one sheet.',
  );
});

test('a sheet that loses a port somebody is joined at is refused', () => {
  const [sheet] = tern.sheets.filter(({ id }) => id === 'gnss-receiver');
  expect(refusalOf('set-sheet', { sheet: { ...sheet, ports: [] } })?.says).toContain('n2k');
  const named = edits['set-sheet'].apply(tern, { sheet: { ...sheet, name: 'Position antenna' } });
  expect(named.sheets.find(({ id }) => id === 'gnss-receiver')?.name).toBe('Position antenna');
  expect(refusalOf('set-sheet', { sheet: { ...sheet, id: 'no-sheet' } })?.says).toContain('no-sheet');
});

test('a circuit more takes one of the places that were counted free', () => {
  const circuit = { id: 'radar-circuit', ratingA: 5, kind: 'breaker', feeds: [] } as const;
  const counted = aBoat().change((boat) => {
    for (const panel of boat.supply.panels) panel.freeWays = 1;
  }).boat;
  const [panel] = edits['add-circuit'].apply(counted, { panel: 'main-panel', circuit }).supply.panels;
  expect([panel?.freeWays, panel?.circuits.at(-1)]).toEqual([0, circuit]);
  expect(edits['add-circuit'].apply(tern, { panel: 'main-panel', circuit }).supply.panels[0]?.freeWays).toBeUndefined();
});

test('a unit called otherwise keeps its id', () => {
  const boat = edits['name-unit'].apply(tern, { unit: 'gnss', name: 'Antenna aft' });
  expect(boat.kit.find(({ id }) => id === 'gnss')?.name).toBe('Antenna aft');
  expect(edits['name-unit'].title({ unit: 'gnss', name: 'Antenna aft' }, tern)).toBe(
    'Call GNSS on the stern rail Antenna aft.',
  );
});
