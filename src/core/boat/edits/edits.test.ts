import { expect, test } from 'vitest';
import { aBoat } from '../a-boat.test-helper.ts';
import type { Boat } from '../boat-schema.ts';
import { type EditId, edits } from './index.ts';
import { refusalOf } from './refusal-of.test-helper.ts';

const tern = aBoat().boat;

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

test('a taped tail takes the place of a guess', () => {
  const tail = { valueM: 0.85, how: 'taped' } as const;
  const boat = edits['tape-tail'].apply(tern, { unit: 'radio', tail });
  expect(boat.kit.find(({ id }) => id === 'radio')?.tail).toEqual(tail);
  expect(edits['tape-tail'].title({ unit: 'radio', tail }, tern)).toMatch(
    /: from its place to its plug it is 0\.85 m, taped\.$/,
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

test('waters are set, and taken back to the usual ones', () => {
  const quiet = edits['set-waters'].apply(tern, { waters: 'quiet' });
  expect(quiet.waters).toBe('quiet');
  expect(edits['set-waters'].apply(quiet, {})).toEqual(tern);
  expect(refusalOf('set-waters', { waters: 'ocean' })).toBeDefined();
});

test('a unit called otherwise keeps its id', () => {
  const boat = edits['name-unit'].apply(tern, { unit: 'gnss', name: 'Antenna aft' });
  expect(boat.kit.find(({ id }) => id === 'gnss')?.name).toBe('Antenna aft');
  expect(edits['name-unit'].title({ unit: 'gnss', name: 'Antenna aft' }, tern)).toBe(
    'Call GNSS on the stern rail Antenna aft.',
  );
});
