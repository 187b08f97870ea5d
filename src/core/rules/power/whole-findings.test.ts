import { expect, test } from 'vitest';
import type { FeedEntry } from '../../plan-shape.ts';
import { findingsOf } from '../rule-case.test-helper.ts';
import { powerRules } from './index.ts';
import { aFeed } from './power-case.test-helper.ts';

/** What every power rule but those of single loads says of these feeds, with its cure. */
const said = (...feeds: FeedEntry[]) =>
  powerRules.flatMap((rule) =>
    findingsOf(rule, { plan: { feeds } }).map(({ level, says, cure }) => `${level}: ${says} ${cure}`),
  );

test('a fuse over its wire is told with the circuit, the way the wire lies and the limit it is past', () => {
  const warned = aFeed({ fuseA: 25.5, ampacityA: 20, carrying: 3, engineSpace: true });
  expect(said(warned)).toEqual([
    'doubt: Circuit helm-circuit lets 26 A through to Helm display; the wire aboard of 2.5 mm² carries 20 A through the engine space, with 3 conductors in one bundle. Fit a fuse of at most 20 A where the wire leaves the panel, or lay a thicker wire.',
  ]);
  const limits = [warned, aFeed({ fuseA: 40, ampacityA: 20 })].map((feed) => {
    const rule = powerRules.find(({ id }) => id === 'power/fuse-over-wire');
    return rule && findingsOf(rule, { plan: { feeds: [feed] } })[0]?.limit?.value;
  });
  expect(limits).toEqual([100, 150]);
});

test('a wire without a fuse, or with one it carries, is no fuse over a wire', () => {
  const { fuseA: _, ...bare } = aFeed({ ampacityA: 2, loadA: 1 });
  expect(said(bare)).toEqual([]);
  expect(said(aFeed({ fuseA: 20, ampacityA: 20, loadA: 4, circuitA: 20 }))).toEqual([]);
});

test('a fuse under its load names what hangs on it, and a rating with a quarter in hand (common practice)', () => {
  expect(said(aFeed({ loadA: 3 }), aFeed({ to: 'gnss.n2k', loadA: 2.5 }))).toEqual([
    'fault: Circuit helm-circuit is 5 A; at the lowest volts 5.5 A hang on it: Helm display, GNSS on the stern rail. Fit 6.9 A or the next rating above, with a wire that carries it; or take something off this circuit.',
  ]);
});

test('circuits with little in hand are told together, one as one', () => {
  const one = aFeed({ loadA: 4.5 });
  const tail = 'less than a quarter in hand with everything drawing at the lowest volts.';
  const cure = 'Fit the next rating where the wire carries it, or share the loads out.';
  expect(said(one)).toEqual([`advice: Circuit helm-circuit (4.5 A on 5 A) has ${tail} ${cure}`]);
  expect(said(aFeed({ loadA: 5 }), { ...one, circuit: 'nav-circuit', to: 'gnss.n2k' })).toEqual([
    `advice: Circuit helm-circuit (5 A on 5 A), circuit nav-circuit (4.5 A on 5 A) have ${tail} ${cure}`,
  ]);
});

test('where no wire does, the reason comes with its own figures and its own cure', () => {
  const apart =
    'Lead it apart from the other feeds and outside the engine space, or split what it feeds over two circuits.';
  const nearer =
    'Put a panel nearer to it, raise the volts of that panel with a thicker feeder, or choose a unit that stands fewer volts.';
  expect(said(aFeed({ whyNot: 'ampacity', carrying: 12, circuitA: 7, fuseA: 7 }))).toEqual([
    `fault: No wire does for Helm display: none of the table carries 7 A for long with 12 conductors in one bundle. ${apart}`,
  ]);
  expect(said(aFeed({ whyNot: 'insulation' }))).toEqual([
    `fault: No wire does for Helm display: its insulation may not lie where it is led. ${apart}`,
  ]);
  expect(said(aFeed({ whyNot: 'drop', wire: 'picked' }))).toEqual([
    `fault: No wire does for Helm display: 3 A over 5.00 m may lose 0.36 V, and the thickest of the table loses more; 2.5 mm² keeps the share of the rules alone. ${nearer}`,
  ]);
});

test('a unit that just gets what it needs is short of nothing, one below is', () => {
  const level = (atEndV: number) => said(aFeed({ dropV: 0.9, atEndV, leastV: 10 }))[0]?.slice(0, 5);
  expect([level(10), level(9.99)]).toEqual(['doubt', 'fault']);
});

test('a peak takes volts in the measure of its current, and a quick breaker opens on it', () => {
  // 0.23 V at 3 A is 2.3 V at 30 A: 2.07 V more than at the steady current.
  expect(said(aFeed({ peakA: 30, atEndV: 10.5, leastV: 10, realDropV: 0.23 }))).toEqual([
    'doubt: Helm display draws 30 A for moments, and then gets 8.43 V of the 10 V it needs. Lay the next thicker wire.',
    'advice: For moments more flows than the rating: Helm display (30 A on 5 A). Fit a slow fuse or breaker of the same rating, not a larger one.',
  ]);
});

test('wires nobody has read are told by the units they feed, each once', () => {
  const { areaMm2: _, ...unread } = aFeed();
  expect(said(unread, { ...unread, panel: 'other', circuit: 'other' })).toEqual([
    'advice: Nobody has said how thick the wire aboard is that feeds Helm display: drop and fuse are reckoned as if it lost just what it may. Read the size off its sheath or measure a strand, and enter it as areaMm2 of the cable.',
  ]);
});
