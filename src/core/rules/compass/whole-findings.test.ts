import { expect, test } from 'vitest';
import type { Boat } from '../../boat/boat-schema.ts';
import { aCompassBoat } from '../../compass-boat.test-helper.ts';
import type { CompassEntry, CompassFeed } from '../../compass-shape.ts';
import { told as toldBy } from '../told.test-helper.ts';
import { feedTooNear, soundCompass, unitNear } from './compass-case.test-helper.ts';
import { compassRules } from './index.ts';

const told = (id: string, own: Partial<CompassEntry>, boat: Boat = aCompassBoat().boat) =>
  toldBy(compassRules, `compass/${id}`, { boat, plan: { compass: [{ ...soundCompass, ...own }] } });

test('of new units near a compass without a swing the nearest is told, of those too near if there are any', () => {
  const swung =
    'and nobody has said that the compass will be swung. The card on the bulkhead was written without it, and will be trusted.';
  const cure =
    'Plan a swing after the work, everything off and everything on, and enter it; until then the old card is worth nothing. The binder has both cards to fill in.';
  const units = [
    unitNear({ unit: 'gnss', distanceM: 0.4 }),
    unitNear({ unit: 'converter', distanceM: 0.7, safeM: 1.2, tooNear: true }),
    unitNear({ unit: 'display', distanceM: 0.6, safeM: 0.9, tooNear: true }),
  ];
  expect(told('no-swing-planned', { units })).toEqual([
    `doubt card display: Helm display comes 0.60 m from steering compass, with 2 more within a metre or their own distance, ${swung} [0.6 m / 0.9] ${cure}`,
  ]);
  expect(told('no-swing-planned', { units: units.slice(0, 1) })).toEqual([
    `advice card gnss: GNSS on the stern rail comes 0.40 m from steering compass, ${swung} [0.4 m / 0.3] ${cure}`,
  ]);
});

test('new units of which no distance is known are told with the nearest, and what is usual for the kind only where too near', () => {
  const units = [
    unitNear({ unit: 'display', distanceM: 0.9, safeBy: 'taken' }),
    unitNear({ unit: 'gnss', distanceM: 0.6, safeBy: 'kind', tooNear: true }),
    unitNear({ unit: 'compass', distanceM: 0.2, safeBy: 'kind' }),
    unitNear({ unit: 'converter', distanceM: 0.1, safeBy: 'sheet', tooNear: true }),
  ];
  expect(told('plate-not-read', { units })).toEqual([
    'doubt card display gnss: Near steering compass come units whose safe distance is not known: Helm display at 0.90 m, GNSS on the stern rail at 0.60 m. [0.6 m / 1] Read the distance on the plate or in the manual and enter it. Without one keep 1 m off, and swing the compass afterwards.',
  ]);
});

test('a feed beside a compass is told with its current, field, turn and how far it must keep', () => {
  expect(told('pair-too-near', { feeds: [feedTooNear({})] })).toEqual([
    'doubt card display: The feed of Helm display passes steering compass at 0.50 m: with 2.0 A its two wires may make 0.40 µT there and turn the card by 1.5°, where 1.2° is allowed. [1.5 ° / 1.2] Twist the two wires where they pass, or keep them 0.60 m off the compass. Then switch it on and watch the card.',
  ]);
  const single = (own: Partial<CompassFeed>) =>
    told('single-wire-near', { feeds: [feedTooNear({ laid: 'single', ...own })] });
  expect(single({ deviationDeg: 12.4 })).toEqual([
    'fault card display: The feed of Helm display passes steering compass at 0.50 m as a single wire: 2.0 A make 0.40 µT there and turn the card by up to 12°, where 1.2° is allowed. [12.4 ° / 1.2] Lead plus and minus side by side all the way, twisted where they pass the compass. A single wire would have to keep 0.60 m off. Swing the compass afterwards.',
  ]);
  const level = (own: Partial<CompassFeed>) => single({ tooNear: false, ...own })[0]?.split(' ')[0];
  expect([level({ distanceM: 0.99 }), level({ distanceM: 1 })]).toEqual(['fault', 'advice']);
  expect(single({ deviationDeg: 9.96 })[0]).toContain('by up to 10.0°');
  expect(single({ deviationDeg: 10 })[0]).toContain('by up to 10°');
});

test('two feeds of one unit beside a compass are two findings', () => {
  expect(told('pair-too-near', { feeds: [feedTooNear({}), feedTooNear({ to: 'display.n2k' })] })).toHaveLength(2);
});

test('of units nobody has read the cure speaks of one or of each, and what leaves is none of them', () => {
  const unread = (fate: 'stays' | 'goes', ...more: string[]) => {
    const boat = aCompassBoat({ aboveM: 2 }).change((draft) => {
      for (const sheet of draft.sheets)
        if (sheet.id !== 'small-display') sheet.compassSafe = { valueM: 0.3, how: 'papers' };
      for (const id of more) draft.kit.push({ id, name: id, sheet: 'small-display', fate: 'comes', place: 'locker' });
      for (const sheet of draft.sheets) if (sheet.id === 'small-display') sheet.kind = 'fan';
      for (const one of draft.kit) if (one.id === 'display' && fate === 'goes') one.fate = 'goes';
    });
    return (
      toldBy(compassRules, 'compass/units-not-read', { boat: boat.boat, plan: { compass: [soundCompass] } })[0] ?? ''
    );
  };
  expect(unread('stays')).toMatch(
    /Read the distance on its plate or in the manual and enter it\. Until then watch the compass while it is switched on/,
  );
  expect(unread('stays', 'blower')).toMatch(
    /Read the distance on each plate, the nearest first, or in the manual and enter it\. Until then watch the compass while each is switched on/,
  );
  expect(unread('goes')).toBe('');
});
