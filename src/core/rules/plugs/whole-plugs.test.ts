import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat, Cable } from '../../boat/boat-schema.ts';
import type { Plug } from '../../boat/sheet.ts';
import type { LineEntry, PlanDraft } from '../../plan-shape.ts';
import { told } from '../told.test-helper.ts';
import { plugsRules } from './index.ts';

const of = (id: string, boat: Boat, plan: Partial<PlanDraft> = {}) => told(plugsRules, `plugs/${id}`, { boat, plan });
const line = (from: string, to: string, own: Partial<LineEntry> = {}): LineEntry => ({
  ...{ id: `pair:${from}~${to}`, kind: 'pair', from, to, places: ['helm', 'locker'], ways: ['locker-helm'] },
  ...{ lengthM: 4, longestM: 4.2, guessed: false, ...own },
});

test('an adapter is told by the plug the port of the bus is on, and only of a bus', () => {
  const boat = (own: { onPlug?: string } = {}) =>
    aBoat().sheet('small-display', (sheet) => {
      const [bus, supply] = sheet.plugs;
      if (bus === undefined || supply === undefined) return;
      sheet.plugs = [
        { ...supply, connector: 'maker-b-2' },
        { ...bus, connector: 'maker-a-5' },
      ];
      for (const port of sheet.ports) if (port.id === 'n2k') Object.assign(port, own);
    }).boat;
  const join = (bus?: string): NonNullable<PlanDraft['joins']>[number] => ({
    ...{
      id: 'join',
      kind: 'nmea2000',
      from: 'file',
      lines: [],
      members: [{ kit: 'display', port: 'n2k', as: 'both' }],
    },
    ...(bus && { bus }),
  });
  expect(of('adapter-to-the-bus', boat(), { joins: [join('nav')] })).toEqual([
    'advice display.n2k nav: Helm display joins Navigation bus by a plug of its own (maker-a-5). An adapter makes it the same bus, and its lead counts as drop. [ / ] Order the adapter with the unit, and count its lead into the tail of the unit.',
  ]);
  expect(of('adapter-to-the-bus', boat(), { joins: [join()] })).toEqual([]);
  expect(of('adapter-to-the-bus', boat({ onPlug: 'nowhere' }), { joins: [join('nav')] })).toEqual([]);
});

test('a fixed lead is told by its own length and the way, sure only where it may not be extended', () => {
  const boat = (own: Partial<Plug> = {}) =>
    aBoat().sheet('small-display', (sheet) => {
      for (const plug of sheet.plugs)
        if (plug.id === 'supply')
          Object.assign(plug, { fixedLead: { valueM: 6, how: 'papers', lessM: 0, moreM: 0 } }, own);
    }).boat;
  const found = (own: Partial<Plug>, ...lines: LineEntry[]) => of('fixed-lead-too-short', boat(own), { lines });
  const said = (level: string, extend: string, way: string, longest: string) => [
    `${level} display: The lead of Helm display is 6.00 m long${extend}; the way is ${way} m and could be ${longest} m. [${Number(longest)} m / 6] Order the longer lead, move one of the two units, or look up whether the maker sells an extension.`,
  ];
  const to = (lengthM: number, longestM: number, end = 'display.supply#2') =>
    line(end, 'radio.wires', { lengthM, longestM });
  expect(found({}, to(6.5, 7.25))).toEqual(
    said('doubt', ', and its sheet does not say whether it may be extended', '6.50', '7.25'),
  );
  const fixed = { mayExtend: false };
  expect(found(fixed, to(6.5, 7.25))).toEqual(said('fault', ' and may not be extended', '6.50', '7.25'));
  expect(found(fixed, to(6, 7))).toEqual(said('doubt', ' and may not be extended', '6.00', '7.00'));
  expect([...found(fixed, { ...to(6.5, 7), kept: ['old'] }), ...found(fixed, to(6.5, 7, 'display.bus'))]).toEqual([]);
  const ends = [
    line('display.supply', 'a.x'),
    line('display.supply', 'b.x'),
    line('c.x', 'display.supply'),
    line('d.x', 'display.supply'),
  ];
  expect(found(fixed, ...ends.map((one) => ({ ...one, longestM: 7 })))).toHaveLength(4);
});

test('a tail is told by its longest and what plug and bend take; coax of 15 mm bends within the same', () => {
  const found = (tailM: number, ...lines: LineEntry[]) =>
    of('no-room-to-bend', aBoat().unit('display', { tail: { valueM: tailM, how: 'taped', lessM: 0, moreM: 0 } }).boat, {
      lines,
    }).filter((one) => one.includes(' display:'));
  const coax = line('display.aerial', 'gnss.bus', { kind: 'coax', coax: 'low-loss-foam-15-mm' });
  expect(found(0.206, coax, line('display.bus', 'nav'))).toEqual([
    'doubt display: The tail of Helm display is at most 206 mm; its plug and a quarter turn of 100 mm radius take 207 mm. [206 mm / 207] Leave a longer tail, or use a plug with its cable to the side.',
  ]);
  expect(found(0.207, coax)).toEqual([]);
  expect(found(0.05, line('gnss.bus', 'radio.dc'))).toEqual([]);
});

test('plugs of one gender are told by cable and unit, at the plug they meet', () => {
  const found = (end: Partial<Cable['to']>, own: Partial<Cable> = {}) => {
    const cable: Cable = {
      ...{ id: 'old-drop', kind: 'drop', ways: ['locker-helm'], diameterMm: 6, condition: 'good', fate: 'stays' },
      ...{ from: { place: 'locker' }, to: { place: 'helm', ...end }, length: { valueM: 5, how: 'taped' }, ...own },
    };
    return of('same-gender-meets', aBoat().with({ cables: [cable] }).boat);
  };
  const said = (cable: string) => [
    `fault display old-drop: The cable ${cable} ends in a male plug at Helm display, whose own plug is male too. They cannot be plugged together. [ / ] Turn the cable round, or order an adapter with the other plug at both ends.`,
  ];
  expect(found({ at: 'display.bus', gender: 'male' })).toEqual(said('old-drop'));
  expect(found({ at: 'display.bus', gender: 'male' }, { name: 'Grey drop' })).toEqual(said('Grey drop'));
  expect([
    ...found({ at: 'display.supply', gender: 'male' }),
    ...found({ at: 'display.supply', gender: 'none' }),
  ]).toEqual([]);
  expect([
    ...found({ at: 'display.gone', gender: 'male' }),
    ...found({ at: 'display.bus' }),
    ...found({ gender: 'male' }),
  ]).toEqual([]);
});
