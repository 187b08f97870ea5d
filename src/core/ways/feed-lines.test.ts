import { expect, test } from 'vitest';
import { aBoat, type BoatBuilder } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import { type FeedLines, feedLines } from './feed-lines.ts';
import { makeRouter } from './routes.ts';

const feedsOf = (builder: BoatBuilder = aBoat()): FeedLines => {
  const index = indexBoat(builder.boat);
  return feedLines({ index, router: makeRouter(index) });
};

test('the display is fed from the panel: 2.2 m of conduit, 0.6 m of tail there and 0.5 m at the panel', () => {
  const { lines, circuitsOf, gaps } = feedsOf();
  expect(lines.map(({ id }) => id)).toEqual(['feed:display.supply~main-panel', 'feed:main-panel~radio.supply']);
  expect(lines[0]).toEqual({
    id: 'feed:display.supply~main-panel',
    kind: 'feed',
    from: 'display.supply',
    to: 'main-panel',
    places: ['helm', 'locker'],
    ways: ['locker-helm'],
    lengthM: 3.3,
    longestM: 3.5,
    guessed: false,
  });
  expect(circuitsOf.get('feed:display.supply~main-panel')).toEqual(['helm-circuit']);
  expect(gaps).toEqual([]);
});

test('a feed keeps its name when it moves to another breaker of the panel', () => {
  const moved = aBoat().change((boat) => {
    const [panel] = boat.supply.panels;
    panel?.circuits.push({ id: 'spare-circuit', ratingA: 5, kind: 'breaker', feeds: ['display.dc'] });
    for (const circuit of panel?.circuits ?? []) if (circuit.id === 'helm-circuit') circuit.feeds = ['radio.dc'];
  });
  expect(feedsOf(moved).lines.map(({ id }) => id)).toEqual(feedsOf().lines.map(({ id }) => id));
});

test('two feeds on one plug are told apart by their ports', () => {
  const two = aBoat()
    .sheet('fixed-radio', (sheet) => {
      sheet.ports.push({ id: 'dc-2', onPlug: 'supply', protocol: 'dc', role: 'listen' });
    })
    .change((boat) => {
      boat.supply.panels[0]?.circuits[0]?.feeds.push('radio.dc-2');
    });
  expect(feedsOf(two).lines.map(({ id }) => id)).toEqual([
    'feed:display.supply~main-panel',
    'feed:main-panel~radio.supply#dc',
    'feed:main-panel~radio.supply#dc-2',
  ]);
});

test('a kept lead that serves the circuit is used as it lies; a unit that goes has no feed', () => {
  const kept = aBoat()
    .with({
      cables: [
        {
          id: 'old-lead',
          kind: 'feed',
          from: { place: 'locker' },
          to: { place: 'helm' },
          serves: 'helm-circuit',
          ways: ['locker-helm'],
          length: { valueM: 2.9, how: 'papers', lessM: 0.3, moreM: 0.3 },
          diameterMm: 7,
          condition: 'good',
          fate: 'stays',
        },
      ],
    })
    .unit('radio', { fate: 'goes' });
  expect(feedsOf(kept).lines).toEqual([
    expect.objectContaining({ id: 'feed:display.supply~main-panel', kept: ['old-lead'], lengthM: 2.9, longestM: 3.2 }),
  ]);
});

test('a feed that no way takes is a gap', () => {
  const noWay = aBoat().change((boat) => {
    for (const way of boat.ways) way.allows = ['drop', 'trunk'];
  });
  expect(feedsOf(noWay).gaps.map(({ from, to }) => [from, to])).toEqual([
    ['main-panel', 'display.supply'],
    ['main-panel', 'radio.supply'],
  ]);
});
