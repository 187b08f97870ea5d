import { describe, expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { Boat, Cable } from '../boat/boat-schema.ts';
import { checkReferences } from '../boat/check-references.ts';
import { lastPhase } from '../boat/phase.ts';
import { boatInPhase } from './boat-in-phase.ts';

const refit = aBoat().unit('compass', { phase: 2 }).unit('radio', { fate: 'goes', phase: 2 });
const feed = (at: string): Cable => ({
  id: 'old-feed',
  kind: 'feed',
  from: { place: 'locker' },
  to: { place: 'helm', at },
  ways: ['locker-helm'],
  length: { valueM: 2.5, how: 'guessed' },
  diameterMm: 6,
  condition: 'good',
  fate: 'goes',
});
const kitOf = (boat: Boat): string[] => boat.kit.map(({ id, fate }) => `${id} ${fate}`);

describe('the boat in a phase', () => {
  test('has the kit aboard then as a boat of one phase: what goes later stays', () => {
    expect(kitOf(boatInPhase(refit.boat, 1))).toEqual([
      'converter comes',
      'display comes',
      'gnss comes',
      'radio stays',
    ]);
    expect(kitOf(boatInPhase(refit.boat, 2))).toEqual([
      'compass comes',
      'converter comes',
      'display comes',
      'gnss comes',
    ]);
    expect(lastPhase(boatInPhase(refit.boat, 2))).toBe(1);
  });

  test('speaks of nothing that is not aboard', () => {
    for (const phase of [1, 2]) {
      const cut = boatInPhase(refit.boat, phase);
      const aboard = new Set(cut.kit.map(({ id }) => id));
      const named = [
        ...cut.joins.flatMap(({ members }) => members.map(({ kit }) => kit)),
        ...cut.needs.map(({ at }) => at),
        ...cut.supply.panels.flatMap(({ circuits }) =>
          circuits.flatMap(({ feeds }) => feeds.filter((target) => target.includes('.')).map((t) => t.split('.')[0])),
        ),
      ];
      expect(named.filter((unit) => !aboard.has(unit ?? ''))).toEqual([]);
    }
    expect(checkReferences(boatInPhase(refit.boat, 1))).toEqual([]);
  });

  test('keeps the cable of a unit until it goes', () => {
    const boat = refit.with({ cables: [feed('radio.supply')] }).boat;
    expect(boatInPhase(boat, 1).cables[0]?.fate).toBe('stays');
    expect(boatInPhase(boat, 2).cables[0]?.fate).toBe('goes');
  });

  test('has the later tees of a settled trunk free, counted along it with the spares of their place', () => {
    const walk = [
      { place: 'helm', tees: ['display.n2k', 'spare@helm#1'] },
      { place: 'mast-base', via: 'helm-mast', tees: ['compass.n2k', 'converter.n2k', 'feed', 'gnss.n2k'] },
    ];
    const pins = { layouts: { nav: { grade: 'light' as const, walk, state: 'fixed' as const } } };
    const tees = boatInPhase({ ...refit.boat, pins }, 1).pins?.layouts?.nav?.walk.map((step) => step.tees);
    expect(tees).toEqual([
      ['display.n2k', 'spare@helm#1'],
      ['spare@mast-base#1', 'converter.n2k', 'feed', 'gnss.n2k'],
    ]);
  });
});
