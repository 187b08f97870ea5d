import { expect, test } from 'vitest';
import type { FeedEntry } from '../../plan-shape.ts';
import { told as toldBy } from '../told.test-helper.ts';
import { powerRules } from './index.ts';
import { aFeed } from './power-case.test-helper.ts';

const told = (id: string, own: Partial<FeedEntry>) =>
  toldBy(powerRules, `power/${id}`, { plan: { feeds: [aFeed(own)] } });
/** What is measured and the limit it is held against, as `told` writes them. */
const figures = (id: string, own: Partial<FeedEntry>) => told(id, own).map((one) => one.match(/\[(.*)\]/)?.[1]);

test('what is measured is what the sentence is about, and the limit is the one it is past', () => {
  expect(figures('no-wire-does', { whyNot: 'drop', wire: 'picked' })).toEqual(['0.2 V / ']);
  expect(figures('no-wire-does', { whyNot: 'ampacity' })).toEqual([' / ']);
  expect(figures('drop-too-big', { dropV: 0.9, atEndV: 9.9, leastV: 10 })).toEqual(['0.9 V / 3']);
  expect(figures('fuse-under-load', { loadA: 6 })).toEqual(['6 A / 5']);
  expect(figures('little-in-hand', { loadA: 4 })).toEqual([]);
  expect(figures('little-in-hand', { loadA: 4.5 })).toEqual([
    expect.stringMatching(/^1\.11\d* x steady current \/ 1\.25$/),
  ]);
});

test('where no fuse does, the reason is told with the current it must carry', () => {
  const cure = 'Look up the current and the fuse in its manual again; if both are right, feed it in two circuits.';
  const says = (whyNot: NonNullable<FeedEntry['whyNot']>) => told('no-fuse-does', { whyNot, loadA: 30 });
  const of = (why: string) => [
    `fault display.dc helm-circuit: No fuse does for Helm display: ${why}. [30 A / ] ${cure}`,
  ];
  expect(says('no-rating')).toEqual(of('it draws 30 A for long, and no rating is made for that'));
  expect(says('maker')).toEqual(of('it draws 30 A for long at the lowest volts, more than the fuse its maker states'));
  expect(says('conductor')).toEqual(of('the wire behind it carries less than a fuse for 30 A needs'));
  expect(says('drop')).toEqual([]);
});
