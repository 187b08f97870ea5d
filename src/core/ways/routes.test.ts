import { expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import { allowsLine, trunkTimes } from './allowed-lines.ts';
import { makeRouter } from './routes.ts';

const routerOf = (builder = aBoat()) => makeRouter(indexBoat(builder.boat));

test('a drop from the locker to the mast base takes the tray straight there', () => {
  expect(routerOf().between({ kind: 'drop', from: 'locker', to: 'mast-base' })).toEqual({
    places: ['locker', 'mast-base'],
    ways: ['locker-mast'],
    mm: 2700,
    longestMm: 2800,
    guessed: false,
  });
});

test('a line goes round by the helm where the tray does not take it', () => {
  const noDrops = aBoat().change((boat) => {
    for (const way of boat.ways) if (way.id === 'locker-mast') way.allows = ['coax'];
  });
  const router = routerOf(noDrops);
  expect(router.between({ kind: 'drop', from: 'locker', to: 'mast-base' })?.ways).toEqual(['locker-helm', 'helm-mast']);
  expect(router.between({ kind: 'coax', from: 'locker', to: 'mast-base' })?.ways).toEqual(['locker-mast']);
});

test('where every way refuses the line there is no route', () => {
  const onlyCoax = aBoat().change((boat) => {
    for (const way of boat.ways) way.allows = ['coax'];
  });
  expect(routerOf(onlyCoax).between({ kind: 'usb', from: 'locker', to: 'helm' })).toBeUndefined();
});

test('a line between two units at one place has no way and no length of its own', () => {
  expect(routerOf().between({ kind: 'pair', from: 'helm', to: 'helm' })).toEqual({
    places: ['helm'],
    ways: [],
    mm: 0,
    longestMm: 0,
    guessed: false,
  });
});

test('ways walked as told may go out and back, but must hang together', () => {
  const router = routerOf();
  expect(router.along({ from: 'helm', ways: ['helm-mast', 'helm-mast', 'locker-helm'] })?.places).toEqual([
    'helm',
    'mast-base',
    'helm',
    'locker',
  ]);
  expect(router.along({ from: 'helm', ways: ['battery-locker'] })).toBeUndefined();
});

test('a guessed way makes the whole route guessed', () => {
  const guessed = aBoat().change((boat) => {
    for (const way of boat.ways) if (way.id === 'locker-stern') way.length = { valueM: 4.5, how: 'guessed' };
  });
  const router = routerOf(guessed);
  expect(router.between({ kind: 'drop', from: 'stern-rail', to: 'helm' })?.guessed).toBe(true);
  expect(router.between({ kind: 'drop', from: 'locker', to: 'helm' })?.guessed).toBe(false);
});

test('the trunk runs out and back in a conduit, once in a mast or a gland, never where it is not allowed', () => {
  expect(trunkTimes({ kind: 'conduit' })).toBe(2);
  expect(trunkTimes({ kind: 'mast' })).toBe(1);
  expect(trunkTimes({ kind: 'gland' })).toBe(1);
  expect(trunkTimes({ kind: 'gland', trunkTimes: 2 })).toBe(2);
  expect(trunkTimes({ kind: 'tray', trunkTimes: 1 })).toBe(1);
  expect(trunkTimes({ kind: 'tray', allows: ['drop', 'feed'] })).toBe(0);
});

test('a way without a list takes every line, a way with an empty list none', () => {
  expect(allowsLine({}, 'coax')).toBe(true);
  expect(allowsLine({ allows: [] }, 'coax')).toBe(false);
});
