import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { anOpening } from '../../boat/an-opening.test-helper.ts';
import type { Boat } from '../../boat/boat-schema.ts';
import type { FitEntry } from '../../fits-shape.ts';
import type { PlanDraft } from '../../plan-shape.ts';
import { told } from '../told.test-helper.ts';
import { soundFit } from './fit-case.test-helper.ts';
import { fittingRules } from './index.ts';

/** Two openings, the one in question second, so that a rule that takes the first it meets is found out. */
const boat = (own: Parameters<typeof anOpening>[0] = {}): Boat =>
  aBoat().with({
    openings: [
      anOpening({
        id: 'another-hole',
        name: 'hole of the log',
        panel: { material: 'grp', thicknessMm: 6, unevenMm: 9 },
      }),
      anOpening({ for: 'display', ...own }),
    ],
  }).boat;
const of = (id: string, fit: Partial<FitEntry>, given: Boat = boat(), plan: Partial<PlanDraft> = {}) =>
  told(fittingRules, `fitting/${id}`, { boat: given, plan: { fits: [{ ...soundFit, ...fit }], ...plan } });
const { unit: _unit, ...unitless } = soundFit;
const nothingComes = (id: string, fit: Partial<FitEntry>, given: Boat = boat()) =>
  told(fittingRules, `fitting/${id}`, { boat: given, plan: { fits: [{ ...unitless, ...fit }] } });
const notSet = { verdict: 'elsewhere' as const };

test('a screen is told by its angle and by its reach, each at the limit it breaks', () => {
  const view = (belowEyeDeg: number, reachMm: number) => ({ view: { lettersMm: 5, floorMm: 3, belowEyeDeg, reachMm } });
  const seen = (deg: string, how: string, limit: number) =>
    `advice display hole: The middle of Helm display is ${deg}° below the line of the eye, too ${how}. [${deg} ° / ${limit}] Set its middle 15 to 30 degrees below the eye, or tilt it towards the eye.`;
  const reached =
    'advice display hole: Helm display is 710.5 mm from the shoulder; 700 mm is reached without leaning. [710.5 mm / 700] Bring it nearer, or give it a keypad within reach.';
  const found = (...[deg, reach]: Parameters<typeof view>) => of('badly-seen-or-reached', view(deg, reach));
  expect(found(14, 710.5)).toEqual([reached, seen('14', 'high', 15)]);
  expect(found(31, 700)).toEqual([seen('31', 'low', 30)]);
  expect([...found(15, 700), ...found(30, 700)]).toEqual([]);
  expect(of('badly-seen-or-reached', { ...view(14, 900), ...notSet })).toEqual([]);
  expect(nothingComes('badly-seen-or-reached', view(14, 900))).toEqual([]);
});

test('a hole to be cut now by sizes nobody has read is told, by its own unit or as guessed', () => {
  const cut = (fit: Partial<FitEntry>, own: Parameters<typeof anOpening>[0] = { toCut: true }) =>
    of('cut-from-typical', fit, boat(own));
  expect(cut({ notForCutting: ['guessed-hole', 'typical-sizes'] })).toEqual([
    'fault display hole: Hole of the old plotter is to be cut now, and the sizes of Helm display are those usual for its kind. [ / ] Enter body, cut-out and screws from its manual, or measured on the unit in hand. Until then its template is not for cutting.',
  ]);
  const guessed: Partial<FitEntry> = { notForCutting: ['guessed-hole'] };
  const said =
    'Hole of the old plotter is to be cut now, and its size is only guessed. [ / ] Measure the hole with a rule, twice, and say so.';
  expect(cut(guessed)).toEqual([`fault display hole: ${said}`]);
  expect(nothingComes('cut-from-typical', guessed, boat({ toCut: true }))).toEqual([`fault hole: ${said}`]);
  expect(of('cut-from-typical', guessed, boat({ id: 'third', toCut: true }))).toEqual([]);
});

test('panel left at an edge is told for each side, as little or as cut through', () => {
  const margins: FitEntry['margins'] = [
    { side: 'left', leftMm: 12.25, needMm: 35 },
    { side: 'below', leftMm: 0, needMm: 35 },
    { side: 'above', leftMm: -4, needMm: 35 },
    { side: 'right', leftMm: 35, needMm: 35 },
  ];
  const cure = 'Choose a smaller unit, another place, or a plate or frame that carries the edge.';
  const said = [
    `fault display hole: The cut-out at hole of the old plotter reaches 4 mm over the edge of the panel, above. [-4 mm / 35] ${cure}`,
    `doubt display hole: 0 mm of panel is left below the cut-out at hole of the old plotter; 35 mm holds. [0 mm / 35] ${cure}`,
    `doubt display hole: 12.3 mm of panel is left to the left of the cut-out at hole of the old plotter; 35 mm holds. [12.25 mm / 35] ${cure}`,
  ];
  expect(of('edge-too-near', { margins })).toEqual(said);
  expect(of('edge-too-near', { margins, ...notSet, case: 'no-room' })).toEqual(said);
  expect(of('edge-too-near', { margins, ...notSet })).toEqual([]);
  expect([...of('edge-too-near', {}), ...of('edge-too-near', { ...notSet, case: 'no-room' })]).toEqual([]);
});

test('letters are told by what is easy to read, under the floor by what is least', () => {
  const found = (hasMm: number, own: Partial<FitEntry> = {}) =>
    of('hard-to-read', { view: { lettersMm: 5.8, floorMm: 3.5, hasMm }, ...own });
  const said = (level: string, mm: number, limit: number, words: string) => [
    `${level} display hole: The smallest letters of Helm display are ${mm} mm high; from where it is read ${limit} mm ${words}. [${mm} mm / ${limit}] Bring it nearer to the eye, set its letters larger, or choose a larger screen.`,
  ];
  expect(found(3.4)).toEqual(said('doubt', 3.4, 3.5, 'is the least'));
  expect(found(3.5)).toEqual(said('advice', 3.5, 5.8, 'is easy to read'));
  expect(found(3.4, notSet)).toEqual([]);
});

test('a hole that shows is told with the plate that covers it, where one is made', () => {
  const shows: Partial<FitEntry> = {
    ...{ verdict: 'plate', case: 'shows', plate: 'dash' },
    uncovered: { widestMm: 13, sides: [], areaMm2: 900, slivers: [] },
  };
  const plate = (id: string, widthMm: number): PlanDraft['plates'][number] => ({
    ...{ id, place: 'helm', openings: [], cuts: [], screws: [], widens: [], overlapMm: 20 },
    ...{ material: 'aluminium', thicknessMm: 3, usualMm: [3, 4] },
    outline: { shape: 'rectangle', xMm: 0, yMm: 0, widthMm, heightMm: 180.55 },
  });
  const said = (made: string) => [
    `doubt display hole: Hole of the old plotter reaches 13 mm beyond what Helm display covers, with its gasket on solid panel. [13 mm / 8] Set it in ${made} over the hole, or fill the hole and have the panel refinished.`,
  ];
  expect(of('hole-shows', shows)).toEqual(said('a plate'));
  const plates = [plate('other', 100), plate('dash', 320)];
  expect(of('hole-shows', shows, boat(), { plates })).toEqual(said('a plate of 320 × 180.6 mm'));
  expect(of('hole-shows', { ...shows, opening: 'another-hole' }, boat({ plate: { id: 'dash' } }))).toHaveLength(1);
  expect(of('hole-shows', shows, boat({ plate: { id: 'dash' } }))).toEqual([]);
  expect(of('hole-shows', { ...shows, ...notSet })).toEqual([]);
});

test('a web is told between two openings of different ids only, and what lies over each other beside it', () => {
  const other = 'other-hole';
  const webs = [
    { to: other, leftMm: -2, needMm: 25 },
    { to: 'hole', leftMm: 3, needMm: 25 },
  ];
  const crowds = [
    { with: other, byMm: 7 },
    { with: 'hole', byMm: 7 },
  ];
  expect(of('web-too-narrow', { webs, crowds })).toEqual([
    'fault hole other-hole: 0 mm is left between hole of the old plotter and other-hole; 25 mm keeps the panel whole. [-2 mm / 25] Set one of them further off, put both in one plate, or back the panel with a frame.',
    'fault hole other-hole: What covers hole of the old plotter lies 7 mm over what covers other-hole. [7 mm / ] Put both in one plate, or choose a smaller unit for one of them.',
  ]);
  expect(of('web-too-narrow', {})).toEqual([]);
});
