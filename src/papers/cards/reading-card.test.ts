import { describe, expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import type { ReadingId } from '../../core/facts/reading-ids.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { type CardBoat, cardBoat } from './card-boat.ts';
import { readingCard } from './reading-card.ts';
import type { ReadingStop } from './reading-tree.ts';

const gannet = anExample('gannet');
const index: CardBoat = cardBoat(gannet);
const known = quickPlan(gannet);
const cardOf = (reading: ReadingId, instance?: number) =>
  readingCard(index, known, { reading, ...(instance === undefined ? {} : { instance }) });

const unitsOn = (stops: readonly ReadingStop[]): string[] =>
  stops.flatMap(({ unit, sends }) => [unit, ...sends.flatMap(({ to }) => unitsOn(to))]);

describe('the way of a reading', () => {
  test('the rudder of the Gannet goes by the old pilot computer and a converter to both instruments', () => {
    const card = cardOf('rudder');
    expect(card?.stands).toBe('2 of 2 units that want it have it');
    expect(unitsOn(card?.sources ?? [])).toEqual([
      'rudder-ref',
      'pilot-computer',
      'conv-pilot',
      'instr-fly',
      'instr-helm',
    ]);
  });

  test('each stretch says what goes over which line, each unit what it does with it', () => {
    const [sensor] = cardOf('rudder')?.sources ?? [];
    const [toComputer] = sensor?.sends ?? [];
    expect(toComputer?.form).toBe('as a bare signal');
    expect(toComputer?.on).toMatch(/^analog lead C\d+, 5\.80 m, .+, from port signal to port rudder-in$/);
    const [computer] = toComputer?.to ?? [];
    expect(computer?.does).toBe('turns analog into NMEA 0183');
    expect(computer?.sends[0]?.form).toBe('RSA (rudder angle), every 1 s');
    const [converter] = computer?.sends[0]?.to ?? [];
    expect(converter?.sends[0]?.on).toBe('Navigation bus, from port n2k to port n2k');
  });

  test('a screen may want a reading and pass it on to another', () => {
    const [transducer] = cardOf('water-temperature')?.sources ?? [];
    const all = (stop: ReadingStop): ReadingStop[] => [stop, ...stop.sends.flatMap(({ to }) => to.flatMap(all))];
    const screen = (transducer === undefined ? [] : all(transducer)).find(({ unit }) => unit === 'mfd-helm');
    expect(screen).toMatchObject({ wants: true, does: 'turns Ethernet into NMEA 2000' });
    expect(screen?.sends[0]?.to.map(({ unit }) => unit)).toEqual(['instr-helm']);
  });

  test('lights every unit and every line on it, on a bus the drops and the trunk between their tees', () => {
    const end = cardOf('depth')?.ends.find(({ at }) => at === 'mfd-helm');
    const units = ['depth-bus', 'mfd-helm'];
    const lines = ['drop:depth-bus.bus~nav', 'drop:mfd-helm.bus~nav'];
    expect(end?.lights).toEqual(expect.arrayContaining([...units, ...lines]));
    const trunk = end?.lights.filter((id) => id.startsWith('trunk:')) ?? [];
    const [bus] = known.buses;
    const stepOf = (tee: string) => bus?.walk.findIndex(({ tees }) => tees.includes(tee)) ?? -1;
    const [one = 0, other = 0] = [stepOf('depth-bus.n2k'), stepOf('mfd-helm.n2k')].sort((a, b) => a - b);
    for (const id of trunk) {
      const line = known.lines.find((entry) => entry.id === id);
      for (const tee of [line?.from, line?.to].map((name) => name?.slice('nav/'.length) ?? '')) {
        expect(stepOf(tee)).toBeGreaterThanOrEqual(one);
        expect(stepOf(tee)).toBeLessThanOrEqual(other);
      }
    }
    expect(trunk.length === 0).toBe(one === other);
  });

  test('of every need that arrives runs from one source, over lines that are all in the plan', () => {
    const ids = new Set([...known.lines.map(({ id }) => id), ...gannet.kit.map(({ id }) => id)]);
    for (const { reading, instance, at, by, forms } of known.readings) {
      const card = cardOf(reading, instance);
      const end = card?.ends.find((one) => one.at === at);
      expect(end?.lights.filter((id) => !ids.has(id) && !id.startsWith('tees:'))).toEqual([]);
      expect(forms).toHaveLength(by.length);
      expect(unitsOn(card?.sources ?? [])).toContain(at);
      expect(card?.sources.map(({ unit }) => unit)).toContain(by[0]?.split('.')[0]);
    }
  });

  test('has the backups, each lit on its own', () => {
    const end = cardOf('depth')?.ends.find(({ at }) => at === 'mfd-fly');
    expect(end?.backups[0]?.says.split(' > ')).toHaveLength(4);
    expect(end?.backups[0]?.lights).toContain('sonar');
    expect(end?.backups[0]?.lights).not.toContain('depth-bus');
  });

  test('that breaks is told by why it breaks, and lights both sides of the break', () => {
    const readings = known.readings.map((entry) =>
      entry.reading === 'rudder' && entry.at === 'instr-fly'
        ? {
            reading: entry.reading,
            at: entry.at,
            must: true,
            arrives: false,
            by: [],
            backups: [],
            whyNot: {
              link: { broken: 'not-joined' as const, from: 'conv-pilot.n2k', to: 'instr-fly.n2k' },
              says: 'Not joined.',
              cures: [],
            },
          }
        : entry,
    );
    const card = readingCard(index, { ...known, readings }, { reading: 'rudder' });
    expect(card?.stands).toBe('1 of 2 units that want it have it');
    const end = card?.ends.find(({ at }) => at === 'instr-fly');
    expect(end?.whyNot?.says).toBe('Not joined.');
    expect(end?.lights).toEqual(['instr-fly', 'conv-pilot', 'break:conv-pilot.n2k~instr-fly.n2k']);
    expect(unitsOn(card?.sources ?? [])).not.toContain('instr-fly');
  });

  test('is no card where nothing asks for the reading', () => {
    expect(cardOf('humidity')).toBeUndefined();
  });
});
