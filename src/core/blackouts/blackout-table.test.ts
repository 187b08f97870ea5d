import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { plan } from '../plan.ts';
import { blackoutTable, modelIn } from './blackout-table.ts';
import { type Effect, effectOf, type Hit } from './effect.ts';
import { everyFailure, together } from './every-failure.ts';
import { failingBoats } from './failing-boats.test-helper.ts';
import { needLosses } from './need-losses.ts';
import { planned } from './planned.test-helper.ts';

const tableOf = (boat: Boat) => {
  const { laid, reaches, phase } = planned(boat);
  return blackoutTable(laid, reaches, phase);
};

/** What one failure takes, in words: `position at display`, a question mark behind what may stay. */
const takenBy = (boat: Boat, how: string, fails: string): string[] | undefined => {
  const isIt = (one: { how: string; fails: string }): boolean => one.how === how && one.fails === fails;
  return tableOf(boat)
    .blackouts.find((entry) => isIt(entry) || entry.also?.some(isIt))
    ?.loses.map(({ reading, at, perhaps }) => `${reading} at ${at}${perhaps === true ? '?' : ''}`);
};

const all = ['heading at display', 'position at display', 'position at radio'];

describe('a single failure on the Tern', () => {
  const { boat } = aBoat();

  test('of the bank, the panel or the fuse of the bus takes everything', () => {
    for (const [how, fails] of [
      ['bank', 'house'],
      ['panel', 'main-panel'],
      ['feeder', 'main-panel'],
      ['fuse', 'main-panel.bus-circuit'],
      ['tee', 'nav/feed'],
      ['short', 'drop:gnss.bus~nav'],
    ] as const)
      expect(takenBy(boat, how, fails), `${how} ${fails}`).toEqual(all);
  });

  test('of a sensor takes what it says, of a converter what it brings, of a screen what it shows', () => {
    expect(takenBy(boat, 'unit', 'compass')).toEqual(['heading at display']);
    expect(takenBy(boat, 'unit', 'converter')).toEqual(['position at radio']);
    expect(takenBy(boat, 'unit', 'display')).toEqual(['heading at display', 'position at display']);
    expect(takenBy(boat, 'unit', 'gnss')).toEqual(['position at display', 'position at radio']);
  });

  test('of a drop takes its unit alone, of a pair the reading on it', () => {
    expect(takenBy(boat, 'line', 'drop:gnss.bus~nav')).toEqual(['position at display', 'position at radio']);
    expect(takenBy(boat, 'line', 'pair:converter.wires~radio.wires')).toEqual(['position at radio']);
  });

  test('of a terminator leaves all in doubt', () => {
    const ends = tableOf(boat).blackouts.flatMap(({ also = [], ...own }) => [own, ...also]);
    const [first] = ends.filter(({ how }) => how === 'terminator');
    expect(takenBy(boat, 'terminator', first?.fails ?? '')).toEqual(all.map((words) => `${words}?`));
  });

  test('of the fuse of a screen leaves alone what its bus port draws: the screen is dark', () => {
    expect(takenBy(boat, 'fuse', 'main-panel.helm-circuit')).toEqual(all);
  });

  test('of one of two feeds takes nothing', () => {
    const twoFeeds = aBoat().change((draft) => {
      draft.supply.panels[0]?.circuits.push({ id: 'second', ratingA: 10, kind: 'fuse', feeds: ['display.dc'] });
    }).boat;
    expect(takenBy(twoFeeds, 'fuse', 'main-panel.second')).toEqual([]);
    expect(takenBy(twoFeeds, 'fuse', 'main-panel.helm-circuit')).toEqual(['position at radio']);
  });

  test('of the supply does not darken what has a battery of its own', () => {
    const held = aBoat().sheet('fixed-radio', (sheet) => {
      sheet.ownBattery = true;
    }).boat;
    expect(tableOf(held).blackouts.find(({ how, fails }) => how === 'bank' && fails === 'house')?.dark).not.toContain(
      'radio',
    );
  });

  test('of a way takes all that lies in it', () => {
    const stern = takenBy(boat, 'way', 'locker-stern');
    expect(stern).toContain('position at radio');
  });

  test('the plan tells it, its numbers and all, whatever part of the plan is asked first', () => {
    const { blackouts, vitals } = plan(boat, new Map());
    expect(blackouts.length).toBeGreaterThan(20);
    expect(vitals.map(({ of }) => of)).toEqual(['heading', 'position', 'radio']);
  });
});

describe('a vital reading', () => {
  test('is marked where one failure takes it off every screen, in doubt where a bus may still work', () => {
    const position = tableOf(aBoat().boat).vitals.find(({ of }) => of === 'position');
    expect(position?.at).toEqual(['display', 'radio']);
    expect(position?.points).toContainEqual({ fails: 'gnss', how: 'unit' });
    expect(position?.points.some(({ how, perhaps }) => how === 'terminator' && perhaps === true)).toBe(true);
    expect(position?.points.some(({ fails }) => fails === 'display')).toBe(false);
  });

  test('heading leaves the crew with the compass they steer by', () => {
    const steered = aBoat()
      .add({
        sheets: [{ id: 'card', name: 'Card', kind: 'steering-compass', source: 'typical', plugs: [], ports: [] }],
      })
      .add({ kit: [{ id: 'bowl', name: 'Compass', sheet: 'card', fate: 'stays', place: 'helm' }] }).boat;
    expect(tableOf(steered).vitals.find(({ of }) => of === 'heading')?.leftWith).toEqual(['bowl']);
  });

  test('the last radio is a single point until there is another that lives on', () => {
    const points = (boat: Boat) =>
      tableOf(boat)
        .vitals.find(({ of }) => of === 'radio')
        ?.points.map(({ fails }) => fails);
    expect(points(aBoat().boat)).toContain('radio');
    const handheld = aBoat()
      .add({
        sheets: [
          { id: 'held', name: 'Held', kind: 'vhf-radio', source: 'typical', plugs: [], ports: [], ownBattery: true },
        ],
      })
      .add({ kit: [{ id: 'hand', name: 'Handheld', sheet: 'held', fate: 'comes', place: 'helm' }] }).boat;
    expect(points(handheld)).toEqual([]);
  });
});

/** A boat ready to be asked what several failures at once take. */
const asked = (boat: Boat) => {
  const { laid, reaches, phase, boat: own } = planned(boat);
  const model = modelIn(laid, phase);
  const lossesWith = (effects: readonly Effect[]) => needLosses(model.wired, effects, reaches).lossesOf(own.needs);
  const taken = (hits: readonly Hit[]): ReadonlySet<string> =>
    new Set(
      lossesWith([effectOf(model, together(hits))])
        .losses.flat()
        .map(({ reading, instance, at }) => `${reading} ${instance} ${at}`),
    );
  const { held } = lossesWith([]);
  const met = new Set(held.map(({ need: { reading, instance, at } }) => `${reading} ${instance} ${at}`));
  return { taken, met, hits: everyFailure(model) };
};

/** What feeds each bus, chosen feeds and all. */
const busFeeds = (boat: Boat) => {
  const { laid, phase } = planned(boat);
  return [...modelIn(laid, phase).graph]
    .filter(([node]) => node.startsWith('bus:'))
    .sort(([a], [b]) => byCodeUnit(a, b));
};

describe('on any small boat', () => {
  test('nothing that fails takes nothing', () => {
    fc.assert(
      fc.property(failingBoats, (boat) => {
        expect(asked(boat).taken([]).size).toBe(0);
      }),
      { numRuns: 60 },
    );
  });

  test('two failures take at least what each takes alone', () => {
    fc.assert(
      fc.property(failingBoats, fc.nat(), fc.nat(), (boat, one, other) => {
        const { taken, hits } = asked(boat);
        const [a, b] = [hits[one % hits.length], hits[other % hits.length]];
        if (a === undefined || b === undefined) return;
        const both = taken([a, b]);
        for (const name of [...taken([a]), ...taken([b])]) expect(both).toContain(name);
      }),
      { numRuns: 150 },
    );
  });

  test('a second feed taken away never shortens a list', () => {
    let shorter = 0;
    fc.assert(
      fc.property(failingBoats, (boat) => {
        const fed = boat.supply.panels.flatMap(({ circuits }) => circuits.flatMap(({ feeds }) => feeds));
        const twice = fed.find((target, at) => fed.indexOf(target) !== at);
        if (twice === undefined) return;
        const last = boat.supply.panels.findLastIndex(({ circuits }) =>
          circuits.some(({ feeds }) => feeds.includes(twice)),
        );
        const panels = boat.supply.panels.map((panel, at) => ({
          ...panel,
          circuits: panel.circuits.map((circuit) =>
            at === last ? { ...circuit, feeds: circuit.feeds.filter((target) => target !== twice) } : circuit,
          ),
        }));
        const [before, after] = [asked(boat), asked({ ...boat, supply: { ...boat.supply, panels } })];
        for (const hit of before.hits) {
          const same = after.hits.find(
            ({ failures: [own] }) => own?.fails === hit.failures[0]?.fails && own?.how === hit.failures[0]?.how,
          );
          if (same === undefined) continue;
          const [with2, with1] = [before.taken([hit]), after.taken([same])];
          for (const name of with2) expect(with1).toContain(name);
          shorter += with1.size > with2.size ? 1 : 0;
        }
      }),
      { numRuns: 150, seed: 3 },
    );
    expect(shorter).toBeGreaterThan(20);
  });

  test('a spare source taken away never shortens a list', () => {
    fc.assert(
      fc.property(failingBoats, fc.nat(), (boat, which) => {
        const gone = boat.kit[which % boat.kit.length]?.id ?? '';
        const { laid, phase } = planned(boat);
        const graph = modelIn(laid, phase).graph;
        // what lives on it would count as fed from elsewhere
        if ([...graph.values()].some((on) => on.includes(`unit:${gone}`))) return;
        const without: Boat = {
          ...boat,
          kit: boat.kit.map((unit) => (unit.id === gone ? { ...unit, fate: 'goes' } : unit)),
        };
        // a trunk without its tee may be fed from another panel
        if (JSON.stringify(busFeeds(without)) !== JSON.stringify(busFeeds(boat))) return;
        const [before, after] = [asked(boat), asked(without)];
        for (const hit of after.hits) {
          const [own] = hit.failures;
          const same = before.hits.find(({ failures: [one] }) => one?.fails === own?.fails && one?.how === own?.how);
          // a trunk without its tee is another trunk
          if (same === undefined || !['unit', 'fuse', 'bank', 'panel'].includes(own?.how ?? '')) continue;
          const still = after.taken([hit]);
          for (const name of before.taken([same])) if (after.met.has(name)) expect(still).toContain(name);
        }
      }),
      { numRuns: 60 },
    );
  });
});
