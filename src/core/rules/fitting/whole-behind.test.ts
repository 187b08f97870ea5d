import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { anOpening } from '../../boat/an-opening.test-helper.ts';
import type { Boat, Place } from '../../boat/boat-schema.ts';
import type { FitEntry } from '../../fits-shape.ts';
import { told } from '../told.test-helper.ts';
import { soundFit } from './fit-case.test-helper.ts';
import { fittingRules } from './index.ts';

/** Two openings, the one in question second, so that a rule that takes the first it meets is found out. */
const boat = (own: Parameters<typeof anOpening>[0] = {}, exposure: Place['exposure'] = 'dry'): Boat =>
  aBoat()
    .with({
      openings: [
        anOpening({
          ...{ id: 'another-hole', viewed: { distanceM: 1, gloves: true } },
          panel: { material: 'grp', thicknessMm: 6, unevenMm: 9 },
        }),
        anOpening({ for: 'display', ...own }),
      ],
    })
    .sheet('small-display', (sheet) => {
      sheet.face = { worked: 'touch' };
    })
    .change((draft) => {
      for (const place of draft.places) place.exposure = place.id === 'helm' ? exposure : 'weather';
    }).boat;
const of = (id: string, fit: Partial<FitEntry>, given: Boat = boat()) =>
  told(fittingRules, `fitting/${id}`, { boat: given, plan: { fits: [{ ...soundFit, ...fit }] } });
const notSet = { verdict: 'elsewhere' as const };

test('warmth is told with watts, walls and rise; air by the side that lacks most', () => {
  const heat = (riseK: number) => ({ heat: { powerW: 29.6, areaM2: 0.804, riseK } });
  const warm =
    'doubt display hole: Helm display gives off up to 30 W into a closed room of 0.80 m² of walls: it gets some 16 K warmer there. [15.6 K / 15] Give the room two vents, one low and one high, or open it to a larger one.';
  const still = (left: number, said: number, where: string, need: number) =>
    `advice display hole: Behind hole of the old plotter ${said} mm of air is left ${where} Helm display; ${need} mm lets its warmth rise. [${left} mm / ${need}] Set it otherwise in the room, or see that air gets out above it.`;
  const air = (above: number, left: number) => ({
    air: [
      { side: 'right' as const, leftMm: 29, needMm: 30 },
      { side: 'above' as const, leftMm: above, needMm: 50 },
      { side: 'left' as const, leftMm: left, needMm: 30 },
    ],
  });
  expect(of('hot-behind', { ...heat(15.6), ...air(31, 12) })).toEqual([still(31, 31, 'above', 50), warm]);
  expect(of('hot-behind', air(33, 12))).toEqual([still(12, 12, 'beside', 30)]);
  expect(of('hot-behind', air(50, -3))).toEqual([still(-3, 0, 'beside', 30)]);
  expect(of('hot-behind', { air: [{ side: 'left', leftMm: 30, needMm: 30 }] })).toEqual([]);
  expect([...of('hot-behind', heat(15)), ...of('hot-behind', { ...heat(16), ...air(1, 1), ...notSet })]).toEqual([]);
});

test('depth behind is told by what is free of what is needed, or by what is to spare', () => {
  const found = (freeMm: number) => of('no-room-behind', { behind: { bodyMm: 85, plugsMm: 80, needMm: 165, freeMm } });
  expect(found(120)).toEqual([
    'fault display hole: Helm display needs 165 mm behind hole of the old plotter with its plugs; 120 mm is free. [120 mm / 165] Choose a flatter unit, set it out by a frame as thick as what lacks, or give it a bracket or another place.',
  ]);
  const spare = (freeMm: number, mm: number) => [
    `doubt display hole: Behind hole of the old plotter Helm display has ${mm} mm to spare with its plugs. [${freeMm} mm / 175] Measure the depth behind once more, at every corner, before anything is cut.`,
  ];
  expect(found(165)).toEqual(spare(165, 0));
  expect(found(174.5)).toEqual(spare(174.5, 9.5));
  expect(found(175)).toEqual([]);
});

test('each thing in the way behind is told by itself', () => {
  const obstacles = ['wheel shaft', 'hose'].map((what) => ({ what, byMm: 40, fromMm: 30 }));
  const said = (what: string) =>
    `fault display hole: ${what} stands 40 mm into the way of Helm display, 30 mm behind hole of the old plotter. [40 mm / ] Move it, or find the unit another place or a bracket.`;
  expect(of('no-room-behind', { obstacles })).toEqual([said('Hose'), said('Wheel shaft')]);
});

test('a panel is told as cut away and as not flat, each at its own opening, where a unit is set', () => {
  const panel = { material: 'grp', thicknessMm: 6, unevenMm: 1.5 } as const;
  const weak = { cutAwayPct: 50.6 };
  expect(of('panel-weak-or-warped', weak, boat({ panel }))).toEqual([
    'doubt display hole: 51 % of the panel at hole of the old plotter is cut away when all is done. [50.6 % / 50] Glue a frame behind it, or make the whole face as one plate.',
    'advice display hole: The panel at hole of the old plotter is 1.5 mm from flat over 300 mm; a gasket takes up 1 mm. [1.5 mm / 1] Fair it, or bed a stiff plate on it and set the unit in that.',
  ]);
  expect(of('panel-weak-or-warped', { ...weak, ...notSet }, boat({ panel }))).toEqual([]);
});

test('screws are counted, those in air apart, and told with the nearest', () => {
  const found = (...edges: number[]) =>
    of('screws-in-air', { screws: edges.map((edgeMm) => ({ xMm: 0, yMm: 0, holeMm: 4, edgeMm, needMm: 10 })) });
  const said = (screws: string, how: string, worst: number) => [
    `fault display hole: ${screws} of Helm display at hole of the old plotter ${screws === '1 screw' ? 'lies' : 'lie'} too near to a hole, ${how}. [${worst} mm / 10] Set the unit in a plate over the hole, or back the panel where they go with a piece glued behind it.`,
  ];
  expect(found(9, 12, 4.25)).toEqual(said('2 screws', 'the nearest 4.3 mm from it', 4.25));
  expect(found(9, 10)).toEqual(said('1 screw', 'the nearest 9 mm from it', 9));
  expect(found(9, 0, -3)).toEqual(said('3 screws', '2 of them in air', -3));
  const screws = [{ xMm: 0, yMm: 0, holeMm: 4, edgeMm: 0, needMm: 10 }];
  expect(of('screws-in-air', { screws, ...notSet })).toEqual([]);
});

test('a screen worked by touch is told where hands are wet or gloved', () => {
  const found = (exposure: Place['exposure'], gloves: boolean, fit: Partial<FitEntry> = {}) =>
    of('touch-with-wet-hands', fit, boat({ viewed: { distanceM: 1, gloves } }, exposure));
  const said = (how: string) => [
    `advice display hole: Helm display is worked by touch only, where hands are ${how}. [ / ] Choose one with keys, or give it a keypad; and learn where its screen is locked against drops.`,
  ];
  expect(found('weather', false)).toEqual(said('wet'));
  expect(found('spray', false)).toEqual(said('wet'));
  expect(found('weather', true)).toEqual(said('gloved'));
  expect(found('dry', true)).toEqual(said('gloved'));
  expect([...found('dry', false), ...found('damp', false), ...found('weather', true, notSet)]).toEqual([]);
  expect(of('touch-with-wet-hands', {}, boat({}, 'dry'))).toEqual([]);
  expect(of('touch-with-wet-hands', {}, boat({}, 'spray'))).toEqual(said('wet'));
});

test('an IP code is told as read, as usual, or as not known, with what the place asks', () => {
  const manual = (source: 'manual' | 'typical') =>
    aBoat().sheet('small-display', (sheet) => {
      sheet.source = source;
    }).boat;
  const need = ['IPX6', 'IPX7'];
  const found = (source: 'manual' | 'typical', has?: string) =>
    of('ip-too-low', { water: { need, ...(has && { has, enough: false }) } }, manual(source));
  const said = (level: string, has: string, cure: string) => [
    `${level} display hole: Helm display ${has}; at helm dash it should be IPX6 and IPX7. [ / 2] ${cure}`,
  ];
  const look = 'Look its IP code up in its manual before it is ordered.';
  expect(found('manual', 'IP54')).toEqual(
    said(
      'fault',
      'is IP54',
      'Choose one made for such a place, or find it a dry one. Codes above 6 do not stand for those below: IPX7 alone is no IPX6.',
    ),
  );
  expect(found('typical', 'IP54')).toEqual(said('doubt', 'is usually IP54', look));
  for (const source of ['manual', 'typical'] as const) {
    expect(found(source)).toEqual(said('doubt', 'is of no IP code that is known', look));
  }
});
