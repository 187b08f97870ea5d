import { describe, expect, it } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import type { Boat, Cable, Join } from '../../boat/boat-schema.ts';
import { pinCoax } from '../../boat/edits/pin-coax.ts';
import { typicalSheets } from '../../facts/sheets/index.ts';
import { plan } from '../../plan.ts';

const sheetOf = (id: string) => typicalSheets.filter((sheet) => sheet.id === id);
const lead = (id: string, from: string, to: string): Join => {
  const [talker = '', talk = ''] = from.split('.');
  const [listener = '', listen = ''] = to.split('.');
  return {
    id,
    kind: 'coax',
    members: [
      { kit: talker, port: talk, as: 'talk' },
      { kit: listener, port: listen, as: 'listen' },
    ],
    hold: 'fixed',
  };
};

/** The Tern with a radio at the helm and its whip on the stern rail. */
const withWhip = aBoat().add({
  sheets: [...sheetOf('vhf-dsc-bus'), ...sheetOf('vhf-whip-1m')],
  kit: [
    { id: 'voice', name: 'new radio', sheet: 'vhf-dsc-bus', fate: 'comes', place: 'helm' },
    { id: 'whip', name: 'whip', sheet: 'vhf-whip-1m', fate: 'comes', place: 'stern-rail' },
  ],
  joins: [lead('coax-voice', 'whip.rf', 'voice.rf')],
}).boat;
const line = 'coax:voice.antenna~whip.coax';
const planOf = (boat: Boat) => plan(boat, new Map());
const pinned = pinCoax.apply(withWhip, { line, as: { kind: 'low-loss-foam-15-mm', state: 'fixed' } });

describe('the coax of a new run', () => {
  it('is the thinnest that loses little enough, bought by its loss, and as thick as that in every pipe', () => {
    const planned = planOf(withWhip);
    expect(planned.lines.find(({ id }) => id === line)?.coax).toBe('rg-8x');
    const item = planned.shopping.find(({ id }) => id === 'coax-cable-rg-8x');
    expect(item?.item).toContain('RG-8X, 6.1 mm, at most 15.8 dB in 100 m at 157 MHz');
    expect(planned.coax).toMatchObject([{ radio: 'voice.rf', antenna: 'whip', joints: 2, use: 'new', verdict: 'ok' }]);
  });

  it('is another where a person settles it, and the plan’s again where they let go', () => {
    const planned = planOf(pinned);
    expect(planned.coax[0]?.pieces).toMatchObject([{ kind: 'low-loss-foam-15-mm', by: 'pin' }]);
    expect(planned.shopping.some(({ id }) => id === 'coax-cable-low-loss-foam-15-mm')).toBe(true);
    const fillOf = (boat: Boat) => planOf(boat).ways.find(({ id }) => id === 'locker-stern')?.fillPct ?? 0;
    expect(fillOf(pinned) - fillOf(withWhip)).toBeCloseTo((100 * (15 ** 2 - 6.1 ** 2)) / 25 ** 2, 3);
    const { pins: _, ...without } = withWhip;
    expect(pinCoax.apply(pinned, { line })).toEqual(withWhip.pins === undefined ? without : withWhip);
  });
});

describe('kept coax', () => {
  const old: Cable = {
    id: 'old-coax',
    kind: 'coax',
    from: { place: 'helm', at: 'voice.antenna' },
    to: { place: 'stern-rail', at: 'whip.coax' },
    serves: 'coax-voice',
    ways: ['locker-helm', 'locker-stern'],
    length: { valueM: 20, how: 'taped', lessM: 0, moreM: 0 },
    diameterMm: 10.3,
    condition: 'good',
    fate: 'stays',
  };
  const runOf = (coax?: Cable['coax']) =>
    planOf({ ...withWhip, cables: [...withWhip.cables, { ...old, ...(coax === undefined ? {} : { coax }) }] }).coax[0];

  it('counts by its own data sheet, else by its name, else as the worst of its thickness', () => {
    const by = (coax?: Cable['coax']) => runOf(coax)?.pieces.map((piece) => [piece.by, piece.dbPer100M]);
    expect(by({ kind: 'rg-8-foam', losses: [{ mhz: 156.8, dbPer100M: 6 }] })).toEqual([['part', 6]]);
    expect(by({ kind: 'rg-8-foam' })).toEqual([['name', 7.9]]);
    expect(by()).toEqual([['thickness', 9.1]]);
  });

  it('is judged by weathered joints until each was found dry', () => {
    expect(runOf({ kind: 'rg-213-u' })).toMatchObject({ use: 'kept', judgedBy: 'weathered' });
    expect(runOf({ kind: 'rg-213-u', joints: 'dry' })).toMatchObject({ judgedBy: 'sound' });
  });

  it('above three decibels is a doubt, however thin it is', () => {
    expect(runOf({ kind: 'rg-58c-u' })).toMatchObject({ verdict: 'doubt', cableDb: 4.2 });
  });
});

it('a run through a splitter counts every piece and names what stands between', () => {
  const { joins, ...rest } = withWhip;
  const split = planOf({
    ...rest,
    sheets: [...rest.sheets, ...sheetOf('antenna-splitter')],
    kit: [...rest.kit, { id: 'splitter', name: 'splitter', sheet: 'antenna-splitter', fate: 'comes', place: 'locker' }],
    joins: [
      ...joins.filter(({ id }) => id !== 'coax-voice'),
      lead('coax-up', 'whip.rf', 'splitter.rf'),
      lead('coax-down', 'splitter.vhf-rf', 'voice.rf'),
    ],
  });
  expect(split.coax).toMatchObject([{ radio: 'voice.rf', antenna: 'whip', through: ['splitter'], joints: 4 }]);
  expect(split.coax[0]?.pieces).toHaveLength(2);
});
