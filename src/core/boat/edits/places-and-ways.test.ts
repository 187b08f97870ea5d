import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../a-boat.test-helper.ts';
import type { Boat, Way } from '../boat-schema.ts';
import { aFullBoat } from '../full-boat.test-helper.ts';
import { straightLineM } from '../straight-line.ts';
import { writeBoat } from '../write-boat.ts';
import { edits } from './index.ts';
import { refusalOf } from './refusal-of.test-helper.ts';

const tern = aBoat().boat;
const full = aFullBoat();

const wayOf = (boat: Boat, id: string): Way => {
  const found = boat.ways.find((way) => way.id === id);
  if (found === undefined) throw new Error(`no way ${id}`);
  return found;
};

const straightOf = (boat: Boat, { ends }: Way): number => {
  const [one, other] = ends.map((end) => boat.places.find(({ id }) => id === end));
  if (one === undefined || other === undefined) throw new Error('no such end');
  return straightLineM(one, other);
};

const sole = {
  id: 'sole',
  name: 'under the sole',
  xM: 4.5,
  yM: 0,
  zM: 0.1,
  exposure: 'damp',
  reach: 'panel',
  tees: false,
};

test('a place is added once, changed, and taken out again', () => {
  const more = edits['add-place'].apply(tern, sole);
  expect(more.places.at(-1)).toEqual(sole);
  expect(edits['add-place'].title({ ...sole, exposure: 'damp', reach: 'panel' }, tern)).toBe('Add under the sole.');
  expect(refusalOf('add-place', { ...sole, id: 'helm' })?.says).toContain('"helm" is the id of a place twice');
  const wanted = { place: 'sole', name: 'bilge', exposure: 'bilge', tees: true, spares: 2 } as const;
  expect(edits['change-place'].title(wanted, more)).toBe(
    'Change under the sole: called bilge, bilge, tees may stand there, 2 spare tees.',
  );
  const changed = edits['change-place'].apply(more, wanted);
  expect(changed.places.at(-1)).toEqual({ ...sole, name: 'bilge', exposure: 'bilge', tees: true, spares: 2 });
  expect(edits['change-place'].apply(changed, { place: 'sole', spares: 0 }).places.at(-1)).not.toHaveProperty('spares');
  expect(edits['remove-place'].apply(more, { place: 'sole' })).toEqual(tern);
});

test('a guessed way follows its place by the proportion of the straight line, a taped one stays as it was taped', () => {
  const guessed = aBoat().change((boat) => {
    for (const way of boat.ways) {
      if (way.id === 'helm-mast') way.length = { valueM: 2, how: 'guessed', lessM: 0.2, moreM: 0.6 };
    }
  }).boat;
  // helm (5, 0.6, 1.4) to mast base (6, 0, 0.5): moved to twice as far away on the same line
  const moved = edits['move-places'].apply(guessed, { places: [{ place: 'mast-base', xM: 7, yM: -0.6, zM: -0.4 }] });
  expect(wayOf(moved, 'helm-mast').length).toEqual({ valueM: 4, how: 'guessed', lessM: 0.4, moreM: 1.2 });
  expect(wayOf(moved, 'locker-mast')).toEqual(wayOf(guessed, 'locker-mast'));
  expect(straightOf(moved, wayOf(moved, 'locker-mast'))).toBeGreaterThan(wayOf(moved, 'locker-mast').length.valueM);
  expect(edits['move-places'].title({ places: [{ place: 'mast-base', xM: 7 }] }, tern)).toBe('Move mast base.');
  const both = { places: [{ place: 'mast-base' }, { place: 'helm' }] };
  expect(edits['move-places'].title(both, tern)).toBe('Move mast base and another place.');
});

test('places moved together leave the guessed way between them as it was', () => {
  const boat = aBoat().change((draft) => {
    for (const way of draft.ways) way.length = { valueM: 3.333, how: 'guessed' };
  }).boat;
  const places = boat.places.map(({ id, xM }) => ({ place: id, xM: xM + 0.25 }));
  expect(edits['move-places'].apply(boat, { places }).ways).toEqual(boat.ways);
});

test('a way between places at one spot is guessed anew when they part', () => {
  const boat = aBoat().change((draft) => {
    const [helm, mast] = ['helm', 'mast-base'].map((id) => draft.places.find((place) => place.id === id));
    if (helm !== undefined && mast !== undefined) Object.assign(helm, { xM: mast.xM, yM: mast.yM, zM: mast.zM });
    for (const way of draft.ways) way.length = { valueM: 0.1, how: 'guessed' };
  }).boat;
  const moved = edits['move-places'].apply(boat, { places: [{ place: 'helm', xM: 5 }] });
  expect(wayOf(moved, 'helm-mast').length).toEqual({ valueM: 1.3, how: 'guessed', lessM: 0.3, moreM: 0.39 });
});

test('a place where something stands is not removed, and says what', () => {
  expect(refusalOf('remove-place', { place: 'helm' })?.says).toBe(
    'helm dash cannot go while something is there: Helm display and Old radio.',
  );
  expect(refusalOf('remove-place', { place: 'battery-box' })?.says).toContain('the bank house');
  expect(refusalOf('remove-place', { place: 'locker' }, full)?.says).toMatch(
    /Converter for the old radio, the panel main-panel and \d+ more/,
  );
  expect(refusalOf('remove-place', { place: 'nowhere' })?.says).toContain('There is no place "nowhere"');
});

test('a place goes with the ways to it, and what ran through them is said', () => {
  const boat = edits['move-unit'].apply(tern, { unit: 'compass', place: 'helm' });
  expect(edits['remove-place'].title({ place: 'mast-base' }, boat)).toBe('Remove mast base, with the 2 ways to it.');
  const gone = edits['remove-place'].apply(boat, { place: 'mast-base' });
  expect(gone.ways.map(({ id }) => id)).toEqual(['battery-locker', 'locker-helm', 'locker-stern']);
});

test('a way is added with a guessed length, and more where it is known', () => {
  const bare = { id: 'battery-mast', ends: ['battery-box', 'mast-base'] } as const;
  const added = wayOf(edits['add-way'].apply(tern, bare), 'battery-mast');
  // (2, -0.5, 0.2) to (6, 0, 0.5): 4.042 m straight, times 1.3, up to the next 5 cm
  expect(added).toEqual({
    ...bare,
    kind: 'open',
    known: 'assumed',
    length: { valueM: 5.3, how: 'guessed', lessM: 1.25, moreM: 1.59 },
  });
  const taped = { ...bare, kind: 'conduit', known: 'seen', length: { valueM: 5, how: 'taped' } } as const;
  expect(wayOf(edits['add-way'].apply(tern, taped), 'battery-mast')).toEqual(taped);
  expect(edits['add-way'].title({ ...bare, ends: ['battery-box', 'mast-base'] }, tern)).toBe(
    'Add a way from battery box to mast base.',
  );
  expect(refusalOf('add-way', { ...bare, ends: ['helm', 'helm'] })?.says).toContain('starts and ends at one place');
});

test('what is said of a way is changed, and forgotten', () => {
  const boat = edits['change-way'].apply(tern, {
    way: 'locker-helm',
    kind: 'tray',
    known: 'seen',
    near: ['mains'],
    forget: ['bore'],
  });
  expect(wayOf(boat, 'locker-helm')).toEqual({
    id: 'locker-helm',
    ends: ['locker', 'helm'],
    length: wayOf(tern, 'locker-helm').length,
    kind: 'tray',
    known: 'seen',
    near: ['mains'],
  });
  const bore = { mm: 40, how: 'taped' } as const;
  expect(edits['change-way'].title({ way: 'locker-helm', bore }, tern)).toBe(
    'Change the way from electrical locker to helm dash: bore 40 mm, taped.',
  );
});

test('a way that is split shares its length by the straight lines to the new place', () => {
  const boat = edits['split-way'].apply(tern, {
    way: 'locker-stern',
    place: { id: 'aft-bulkhead', name: 'aft bulkhead', xM: 1, yM: -0.9, zM: 1.2 },
  });
  const [first, second] = [wayOf(boat, 'locker-stern'), wayOf(boat, 'locker-stern-2')];
  expect([first.ends, second.ends]).toEqual([
    ['locker', 'aft-bulkhead'],
    ['aft-bulkhead', 'stern-rail'],
  ]);
  const share = straightOf(boat, first) / (straightOf(boat, first) + straightOf(boat, second));
  expect(first.length.valueM).toBeCloseTo(4.5 * share, 3);
  expect(first.length.valueM + second.length.valueM).toBeCloseTo(4.5, 9);
  expect(second).toMatchObject({ kind: 'conduit', known: 'pulled', bore: { mm: 25, how: 'taped' }, through: 'deck' });
  expect(boat.places.at(-1)).toMatchObject({ reach: 'panel', tees: false });
});

test('cables and settled routes and trunks go through both halves', () => {
  const place = { id: 'halfway', name: 'halfway' };
  const boat = edits['split-way'].apply(full, { way: 'helm-mast', place });
  const log = boat.cables.find(({ id }) => id === 'old-log');
  expect(log?.ways.filter((id) => id.startsWith('helm-mast'))).toEqual(['helm-mast', 'helm-mast-2']);
  expect(boat.pins?.routes?.['pair:converter.wires~radio.wires']?.ways).toEqual([
    'helm-mast',
    'helm-mast-2',
    'locker-mast',
  ]);
  expect(boat.pins?.layouts?.nav?.walk.map(({ place: at, via }) => [at, via])).toEqual([
    ['locker', undefined],
    ['helm', 'locker-helm'],
    ['halfway', 'helm-mast'],
    ['mast-base', 'helm-mast-2'],
  ]);
});

test.each(full.ways.map(({ id }) => id))('the way %s, split and joined again, is the way it was', (way) => {
  const at = fc.record({ xM: fc.integer({ min: 0, max: 8 }), yM: fc.integer({ min: -1, max: 1 }) });
  fc.assert(
    fc.property(at, fc.boolean(), (spot, isHalfway) => {
      const place = { id: 'between', name: 'between', ...(isHalfway ? {} : spot) };
      const split = edits['split-way'].apply(full, { way, place });
      expect(split.ways).toHaveLength(full.ways.length + 1);
      expect(writeBoat(edits['join-ways'].apply(split, { place: 'between' }))).toBe(writeBoat(full));
    }),
    { numRuns: 20 },
  );
});

test('ways that differ become one of the narrower bore, the lesser knowledge and both lengths', () => {
  const boat = aBoat()
    .add({ places: [{ ...sole, exposure: 'damp', reach: 'panel' }] })
    .change((draft) => {
      draft.ways = draft.ways.filter(({ id }) => id !== 'locker-helm');
      const bore = { mm: 20, how: 'guessed' } as const;
      draft.ways.push(
        { id: 'aft', ends: ['sole', 'locker'], length: { valueM: 1, how: 'taped' }, kind: 'tray', known: 'pulled' },
        {
          id: 'fore',
          ends: ['sole', 'helm'],
          length: { valueM: 2, how: 'guessed' },
          kind: 'conduit',
          known: 'seen',
          bore,
        },
      );
    }).boat;
  const joined = edits['join-ways'].apply(boat, { place: 'sole' });
  expect(wayOf(joined, 'aft')).toEqual({
    id: 'aft',
    ends: ['locker', 'helm'],
    // 1 m taped: 3 % and 0.1 m; 2 m guessed: at least 0.5 m, or 30 %
    length: { valueM: 3, how: 'guessed', lessM: 0.63, moreM: 0.73 },
    kind: 'conduit',
    known: 'seen',
    bore: { mm: 20, how: 'guessed' },
  });
  expect(joined.places.map(({ id }) => id)).not.toContain('sole');
});

test('two ways are not made one over a place that is more than a point of a way', () => {
  expect(refusalOf('join-ways', { place: 'mast-base' })?.says).toBe(
    'mast base is more than a point of a way: Heading sensor at the mast.',
  );
  expect(refusalOf('join-ways', { place: 'locker' })?.says).toBe(
    'electrical locker does not lie between two ways that could be one.',
  );
});

test('a way that is removed says what ran through it, and lets go what was only settled by choice', () => {
  expect(edits['remove-way'].title({ way: 'helm-mast' }, full)).toBe(
    'Remove the way from helm dash to mast base. The backbone Navigation bus, pair:converter.wires~radio.wires and 2 more ran through it.',
  );
  const boat = edits['remove-way'].apply(full, { way: 'helm-mast' });
  expect(boat.pins?.layouts).toBeUndefined();
  expect(Object.keys(boat.pins?.routes ?? {})).toEqual(['feed:radio.supply~main-panel']);
  expect(boat.cables.find(({ id }) => id === 'old-log')?.ways).not.toContain('helm-mast');
  expect(refusalOf('remove-way', { way: 'locker-stern' }, full)?.says).toBe(
    'This way cannot go: feed:radio.supply~main-panel is bought for it.',
  );
});

test('a cable that is aboard is put down, changed and taken out', () => {
  const old = {
    id: 'old-feed',
    kind: 'feed',
    from: { place: 'locker' },
    to: { place: 'helm' },
    ways: ['locker-helm'],
    length: { valueM: 2.2, how: 'taped' },
    diameterMm: 9,
    condition: 'untested',
    fate: 'stays',
  } as const;
  const boat = edits['add-cable'].apply(tern, old);
  const changed = edits['change-cable'].apply(boat, { cable: 'old-feed', name: 'old feed', condition: 'good' });
  expect(changed.cables).toEqual([{ ...old, name: 'old feed', condition: 'good' }]);
  expect(refusalOf('change-cable', { cable: 'old-feed', ways: ['no-way'] }, boat)?.says).toContain('no way "no-way"');
  const pieces = {
    'feed:radio.supply~main-panel': { pieces: [{ mm: 2200, cable: 'old-feed' }], state: 'fitted' as const },
  };
  const used = { ...boat, pins: { pieces } };
  expect(edits['remove-cable'].apply(used, { cable: 'old-feed' })).toEqual({
    ...tern,
    pins: { pieces: { 'feed:radio.supply~main-panel': { pieces: [{ mm: 2200 }], state: 'fitted' } } },
  });
});
