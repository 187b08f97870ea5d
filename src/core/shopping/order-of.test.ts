import { describe, expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { typicalPrices } from '../facts/prices.ts';
import { plan } from '../plan.ts';
import type { Plan, ShoppingEntry } from '../plan-shape.ts';

const { source: _, ...usual } = typicalPrices;
const planned = (boat: Boat): Plan => plan(boat, new Map());
const itemOf = (boat: Boat, id: string): ShoppingEntry | undefined =>
  planned(boat).shopping.find((entry) => entry.id === id);
const idsOf = (boat: Boat): string[] => planned(boat).shopping.map(({ id }) => id);
const gnssSheet = aBoat().boat.kit.find(({ id }) => id === 'gnss')?.sheet ?? '';
const withGnssPlug = (connector: string, gender: 'male' | 'female' | 'none'): Boat =>
  aBoat().sheet(gnssSheet, (sheet) => {
    for (const plug of sheet.plugs) if (plug.id === 'bus') Object.assign(plug, { connector, gender });
  }).boat;

describe('between a drop and its unit', () => {
  test('a male plug of the bus needs nothing', () => {
    expect(idsOf(withGnssPlug('n2k-micro', 'male')).filter((id) => id.startsWith('adapter'))).toEqual([]);
  });

  test('a maker’s own female plug takes an adapter that is male there and male toward the drop', () => {
    const id = 'adapter-maker-a-push-male-to-micro-male';
    expect(itemOf(withGnssPlug('maker-a-push', 'female'), id)).toMatchObject({
      kind: 'adapter',
      count: 1,
      sure: false,
    });
    expect(itemOf(withGnssPlug('maker-a-push', 'male'), 'adapter-maker-a-push-female-to-micro-male')).toBeDefined();
  });

  test('a female plug of the bus takes one too, since a drop ends female', () => {
    expect(idsOf(withGnssPlug('n2k-micro', 'female'))).toContain('adapter-n2k-micro-male-to-micro-male');
  });

  test('bare leads get a male plug', () => {
    expect(itemOf(withGnssPlug('leads', 'none'), 'micro-field-plug-male')).toMatchObject({ kind: 'plug', count: 1 });
  });
});

describe('the ends of a trunk', () => {
  const atEnd = (boat: Boat): { boat: Boat; unit: string } => {
    const [bus] = planned(boat).buses;
    const tee = [...(bus?.walk[0]?.tees ?? []), ...(bus?.walk.at(-1)?.tees ?? [])].find((entry) => entry.includes('.'));
    return { boat, unit: tee?.split('.')[0] ?? '' };
  };

  test('take one terminator of either gender', () => {
    const ids = idsOf(aBoat().boat).filter((id) => id.startsWith('micro-terminator'));
    expect(ids).toEqual(['micro-terminator-female', 'micro-terminator-male']);
  });

  test('take one less where a unit there has one built in', () => {
    const { boat, unit } = atEnd(aBoat().boat);
    const sheet = boat.kit.find(({ id }) => id === unit)?.sheet ?? '';
    const ids = idsOf(
      aBoat().sheet(sheet, (draft) => {
        draft.terminator = true;
      }).boat,
    );
    expect(ids.filter((id) => id.startsWith('micro-terminator')).length).toBeLessThan(2);
  });

  test('a spare tee is one tee and one cap more', () => {
    const more = aBoat().change((boat) => {
      for (const place of boat.places) if (place.id === 'helm') place.spares = 2;
    }).boat;
    for (const id of ['micro-tee', 'micro-dust-cap']) {
      expect((itemOf(more, id)?.count ?? 0) - (itemOf(aBoat().boat, id)?.count ?? 0)).toBe(1);
    }
  });
});

describe('what a person has settled', () => {
  const dropOf = (boat: Boat) =>
    planned(boat).lines.find(({ kind, pieces }) => kind === 'drop' && pieces !== undefined);
  const line = dropOf(aBoat().boat);

  test('pieces that are bought are not bought again', () => {
    const id = line?.id ?? '';
    const pins: Boat['pins'] = { pieces: { [id]: { pieces: [{ mm: 5000 }], state: 'bought' } } };
    const { lines, shopping } = planned(aBoat().with({ pins }).boat);
    expect(lines.find((entry) => entry.id === id)?.pieces).toEqual([{ lengthM: 5, made: false }]);
    expect(shopping.filter(({ kind, for: ids }) => kind === 'drop' && ids.includes(id))).toEqual([]);
  });

  test('cable that is bought for its route, or lies in it, is not bought again; for a route that is only fixed it is', () => {
    const id = 'pair:converter.wires~radio.wires';
    const boughtFor = (state: 'fixed' | 'bought' | 'fitted'): number => {
      const pins: Boat['pins'] = { routes: { [id]: { ways: ['locker-mast', 'helm-mast'], state } } };
      const { shopping } = planned(aBoat().with({ pins }).boat);
      return shopping.filter(({ kind, for: ids }) => kind === 'cable' && ids.includes(id)).length;
    };
    expect([boughtFor('fixed'), boughtFor('bought'), boughtFor('fitted')]).toEqual([1, 0, 0]);
  });

  test('a trunk that is fitted is off the list with its tees and ends', () => {
    const [bus] = planned(aBoat().boat).buses;
    if (bus === undefined) throw new Error('The Tern has a bus.');
    const layout = { grade: bus.grade, walk: bus.walk, state: 'fitted' as const };
    const { shopping } = planned(aBoat().with({ pins: { layouts: { [bus.id]: layout } } }).boat);
    expect(shopping.filter(({ kind }) => kind === 'trunk' || kind === 'bus-part')).toEqual([]);
    expect(shopping.filter(({ kind }) => kind === 'drop')).not.toEqual([]);
  });

  test('a length on the own price list is what is bought, at its price, in the layout too', () => {
    const items = { 'light-drop-4000mm': 1111 };
    const boat = aBoat().with({ prices: { ...usual, items } }).boat;
    const { shopping, buses } = planned(boat);
    const drops = shopping.filter(({ kind }) => kind === 'drop');
    expect(drops.every(({ id }) => id === 'light-drop-4000mm' || id === 'light-drop-cable')).toBe(true);
    expect(drops.find(({ id }) => id === 'light-drop-4000mm')?.each).toBe(1111);
    expect(buses[0]?.drops.every(({ boughtM }) => boughtM >= 4)).toBe(true);
  });

  test('an order is told with its item', () => {
    const orders: Boat['orders'] = [{ item: 'micro-tee', state: 'arrived', supplier: 'the chandler' }];
    expect(itemOf(aBoat().with({ orders }).boat, 'micro-tee')?.order).toEqual(orders[0]);
  });
});

test('a unit that stays is not bought, and one that comes is, with the price of its kind', () => {
  const comes = aBoat().unit('radio', { fate: 'comes' }).unit('gnss', { fate: 'stays' }).boat;
  expect(itemOf(comes, 'unit-fixed-radio')).toMatchObject({ kind: 'unit', each: 45_000, for: ['radio'] });
  expect(idsOf(comes)).not.toContain(`unit-${gnssSheet}`);
});

test('a way nobody has seen costs what the way round it costs, or all there is on it', () => {
  const boat = aBoat().change((draft) => {
    for (const way of draft.ways) if (way.id === 'locker-helm' || way.id === 'locker-stern') way.known = 'assumed';
  }).boat;
  const { tape, lines } = planned(boat);
  const [stern, helm] = ['prove:locker-stern', 'prove:locker-helm'].map((id) => tape.find((entry) => entry.id === id));
  // The stern rail hangs on one way; from locker to helm one can go round by the mast.
  expect(stern?.blocked?.noOtherWay).toEqual(stern?.lines);
  expect(helm?.blocked?.noOtherWay).toEqual([]);
  const without: Boat = { ...boat, ways: boat.ways.filter(({ id }) => id !== 'locker-helm') };
  const feeds = (list: typeof lines): number =>
    list.filter(({ kind }) => kind === 'feed').reduce((sum, { longestM }) => sum + longestM, 0);
  expect(feeds(planned(without).lines)).toBeGreaterThanOrEqual(feeds(lines));
  expect(helm?.atStake).toBeGreaterThan(0);
});
