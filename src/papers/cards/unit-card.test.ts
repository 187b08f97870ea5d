import { describe, expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { plan } from '../../core/plan.ts';
import { cardBoat } from './card-boat.ts';
import { connectorWords } from './connector-words.ts';
import { unitCard } from './unit-card.ts';

const { boat: tern } = aBoat();
const cardOf = (id: string, boat: Boat = tern) => unitCard(cardBoat(boat), plan(boat, new Map()), id);

describe('the card of a unit', () => {
  test('says what it is, what becomes of it and where it stands', () => {
    const unit = tern.kit.find(({ id }) => id === 'display');
    const place = tern.places.find(({ id }) => id === unit?.place)?.name;
    const card = cardOf('display');
    expect(card?.name).toBe(unit?.name);
    expect(card?.stands).toBe(`comes aboard; ${place}`);
  });

  test('names the phase only on a boat that is refitted in several', () => {
    const { boat } = aBoat().unit('display', { fate: 'comes', phase: 2 });
    expect(cardOf('display', boat)?.stands).toMatch(/^comes aboard in phase 2; /);
  });

  test('has every message with its number and how often it comes', () => {
    const said = cardOf('gnss')?.says.flatMap(({ messages }) => messages);
    expect(said).toContainEqual({ what: 'position', code: 'PGN 129025', how: 'every 100 ms' });
  });

  test('gives the unit’s own number in place of the sheet’s', () => {
    const { boat } = aBoat().unit('gnss', { instances: [{ port: 'n2k', reading: 'position', instance: 7 }] });
    const said = cardOf('gnss', boat)?.says.flatMap(({ messages }) => messages);
    expect(said?.find(({ code }) => code === 'PGN 129025')?.how).toBe('instance 7, every 100 ms');
  });

  test('says that a typical sheet is to be checked, and a manual is not', () => {
    expect(cardOf('converter')?.rests).toEqual(['Typical of its kind: check the maker’s sheet.']);
    const { boat } = aBoat().sheet('converter-0183', (sheet) => {
      sheet.source = 'manual';
      sheet.sourceNote = 'Manual, page 12.';
    });
    expect(cardOf('converter', boat)?.rests).toEqual(['From the maker’s own manual.', 'Manual, page 12.']);
  });

  test('says what it draws, and the volts it has left at its plug', () => {
    const draws = cardOf('gnss')?.draws.join(' ');
    expect(draws).toMatch(/^From the bus: [\d.]+ A typical, [\d.]+ A at most, entered as \d+ LEN\./);
    expect(draws).toMatch(
      /With everything drawing and the bank at its lowest it has 1\d\.\d\d V at its plug; 0\.\d\d V of what is lost are lost on the bus\./,
    );
  });

  test('says the wire, the length and the fuse of its feed, and the volts that arrive over it', () => {
    const feed = plan(tern, new Map()).feeds.find(({ to }) => to === 'display.dc');
    const draws = cardOf('display')?.draws.join(' ');
    expect(draws).toContain(
      `Its feed is ${feed?.areaMm2} mm² (${feed?.awg} AWG), ${feed?.lengthM.toFixed(2)} m, a 3 A fuse of its own`,
    );
    expect(draws).toContain(`it has ${feed?.atEndV?.toFixed(2)} V at its plug.`);
  });

  test('says when too few volts arrive', () => {
    const { boat } = aBoat().sheet('small-display', (sheet) => {
      for (const power of sheet.power ?? []) if (power.port === 'dc') power.minV = 11.79;
    });
    expect(cardOf('display', boat)?.draws.join(' ')).toContain('V at its plug, which is too few');
  });

  test('says when no circuit feeds it', () => {
    const { boat } = aBoat().change((draft) => {
      for (const panel of draft.supply.panels)
        for (const circuit of panel.circuits)
          circuit.feeds = circuit.feeds.filter((fed) => !fed.startsWith('display.'));
    });
    expect(cardOf('display', boat)?.draws).toContain('No circuit feeds it yet.');
  });

  test('leads each plug to the far end by the places its line passes', () => {
    const plug = cardOf('gnss')?.plugs[0];
    const drop = plan(tern, new Map()).lines.find(({ id }) => id.startsWith('drop:') && id.includes('gnss.'));
    expect(plug?.what).toBe('micro bus plug, five poles, male');
    expect(plug?.lines[0]?.lights).toEqual([drop?.id]);
    expect(plug?.lines[0]?.says).toMatch(/^drop C\d+, [\d.]+ m, to its tee on .+, .+$/);
    expect(plug?.lines[0]?.route?.split(' > ')).toHaveLength(drop?.places.length ?? 0);
    expect(plug?.lines[0]?.route).toMatch(/^stern rail > /);
  });

  test('lists what it wants, first what does not arrive', () => {
    const { boat } = aBoat().change((draft) => {
      draft.needs.push({ reading: 'camera', at: 'display', must: true });
    });
    const wants = cardOf('display', boat)?.wants;
    expect(wants?.[0]).toMatchObject({ reading: 'camera', arrives: false });
    expect(wants?.slice(1).every(({ arrives }) => arrives)).toBe(true);
  });

  test('is none for an id that is no unit', () => {
    expect(cardOf('nobody')).toBeUndefined();
  });
});

describe('before and after', () => {
  test('what comes was not aboard before', () => {
    expect(cardOf('display')?.before).toEqual(['It was not aboard before.']);
  });

  test('what a unit had and nothing has afterwards is lost', () => {
    const known = plan(tern, new Map());
    const before = [
      { reading: 'depth' as const, at: 'converter', by: [], after: true },
      { reading: 'log-distance' as const, at: 'converter', by: [], after: false },
    ];
    const { boat } = aBoat().unit('converter', { fate: 'goes' });
    expect(unitCard(cardBoat(boat), { ...known, before }, 'converter')?.before).toEqual([
      'Before, it had depth, log distance.',
      'Lost with the refit: log distance.',
    ]);
  });
});

test('a plug that only one maker has is called so', () => {
  expect(connectorWords({ id: 'bus', connector: 'maker-a-push-5', gender: 'female' })).toBe(
    'maker A’s own plug, type push 5, female',
  );
});
