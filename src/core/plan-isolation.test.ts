import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aBoat, type BoatBuilder } from './boat/a-boat.test-helper.ts';
import type { Kit } from './boat/boat-schema.ts';
import type { Earthing } from './boat/earthing.ts';
import { aSteelBoat, isolationOf, withMetal } from './steel-boat.test-helper.ts';
import { twoSupplies } from './two-supplies.test-helper.ts';

const waysOf = (builder: BoatBuilder): string[] => isolationOf(builder.boat).ways.map(({ id }) => id);
const bare = { mount: 'metal', earthing: { bodyTo: 'negative' } } as const;

describe('where the minus of a steel boat meets her hull', () => {
  it('nowhere but at the named point, as long as no metal is known to meet it', () => {
    expect(isolationOf(aSteelBoat().boat)).toMatchObject({ hull: 'metal', point: 'battery-box', ways: [] });
  });

  it('through a case that is its minus and stands bare, with the pad as its cure and the pad’s price', () => {
    const [way] = isolationOf(withMetal(aSteelBoat(), { id: 'amp', kind: 'amplifier', ...bare }).boat).ways;
    expect(way).toMatchObject({
      id: 'hull:case:amp+mount:amp',
      from: 'negative:house',
      to: 'hull',
      sure: true,
      cure: { bond: 'mount:amp', cost: 1500 },
    });
  });

  it.each<[string, { mount?: Kit['mount']; earthing: Earthing }]>([
    ['on a pad', { mount: 'isolated', earthing: { bodyTo: 'negative' } }],
    ['with a case that floats', { mount: 'metal', earthing: { bodyTo: 'nothing' } }],
    ['with a case of plastic', { mount: 'metal', earthing: { body: 'plastic', bodyTo: 'negative' } }],
    ['with nothing said', { earthing: {} }],
  ])('not through one %s', (_, unit) => {
    expect(waysOf(withMetal(aSteelBoat(), { id: 'amp', kind: 'amplifier', ...unit }))).toEqual([]);
  });

  it('on a hull that is not of metal a case meets nothing, but a through-hull housing meets the water', () => {
    expect(waysOf(withMetal(aBoat(), { id: 'amp', kind: 'amplifier', ...bare }))).toEqual([]);
    expect(waysOf(withMetal(aBoat(), { id: 'ping', kind: 'transducer', ...bare }))).toEqual([
      'water:case:ping+water:ping',
    ]);
  });

  it('through the mast, where the unit stands on one', () => {
    const boat = withMetal(aSteelBoat(), { id: 'dome', kind: 'radar', place: 'spreader', ...bare }).add({
      places: [
        { id: 'spreader', name: 'spreaders', xM: 6, yM: 0, zM: 8, exposure: 'weather', reach: 'aloft', tees: false },
      ],
      ways: [
        { id: 'up', ends: ['mast-base', 'spreader'], length: { valueM: 8, how: 'taped' }, kind: 'mast', known: 'seen' },
      ],
    });
    const [way] = isolationOf(boat.boat).ways;
    expect(way?.bonds.map(({ id }) => id)).toEqual(['case:dome', 'mount:dome', 'mast:mast-base']);
    expect(way?.cure?.bond).toBe('mount:dome');
  });

  it('through the block of an engine whose poles are not isolated, unless it stands at the named point', () => {
    const engine = (place: string, earthing: Earthing) =>
      withMetal(aSteelBoat(), { id: 'diesel', kind: 'engine', place, earthing });
    const [way] = isolationOf(engine('mast-base', { poles: 'block' }).boat).ways;
    // nobody said how it stands: an engine stands on its feet and its shaft
    expect(way).toMatchObject({ id: 'hull:poles:diesel+mount:diesel', sure: false });
    expect(waysOf(engine('battery-box', { poles: 'block' }))).toEqual([]);
    expect(waysOf(engine('mast-base', { poles: 'isolated' }))).toEqual([]);
  });

  it('an engine with isolated poles is joined to the minus by a sender that returns over it', () => {
    const boat = withMetal(
      withMetal(aSteelBoat(), {
        id: 'diesel',
        kind: 'engine',
        place: 'mast-base',
        mount: 'isolated',
        earthing: { poles: 'isolated' },
      }),
      { id: 'sender', kind: 'sender', place: 'mast-base', ...bare },
    );
    expect(isolationOf(boat.boat).ways).toMatchObject([
      { meets: 'engine', to: 'body:diesel', cure: { bond: 'mount:sender' } },
    ]);
  });

  it('says which units nobody has looked at, and only on a metal hull', () => {
    const dome = { id: 'dome', kind: 'radar', earthing: {} };
    expect(isolationOf(withMetal(aSteelBoat(), dome).boat).unknown).toEqual(['dome']);
    expect(isolationOf(withMetal(aBoat(), dome).boat).unknown).toEqual([]);
    expect(isolationOf(withMetal(aSteelBoat(), { ...dome, mount: 'isolated' }).boat).unknown).toEqual([]);
  });

  it('whatever the units: parting what the cures name parts the hull, and a pad under everything leaves nothing', () => {
    const anyUnit = fc.record({
      mount: fc.constantFrom<Kit['mount']>('metal', 'isolated'),
      kind: fc.constantFrom('amplifier', 'radar', 'transducer'),
      bodyTo: fc.constantFrom<'negative' | 'nothing'>('negative', 'nothing'),
    });
    fc.assert(
      fc.property(fc.array(anyUnit, { maxLength: 4 }), (units) => {
        const fitted = (all: typeof units) =>
          all.reduce(
            (builder, { mount, kind, bodyTo }, at) =>
              withMetal(builder, { id: `unit-${at}`, kind, mount, earthing: { bodyTo } }),
            aSteelBoat(),
          );
        const { ways } = isolationOf(fitted(units).boat);
        const touching = units.flatMap(({ mount, bodyTo }, at) =>
          mount === 'metal' && bodyTo === 'negative' ? [`unit-${at}`] : [],
        );
        expect(ways.flatMap(({ bonds }) => bonds.at(-1)?.about ?? [])).toEqual(touching);
        const cured = new Set(ways.map(({ cure }) => cure?.bond));
        const padded = units.map((unit, at) =>
          cured.has(`mount:unit-${at}`) ? { ...unit, mount: 'isolated' as const } : unit,
        );
        expect(waysOf(fitted(padded))).toEqual([]);
      }),
      { numRuns: 15 },
    );
  });
});

describe('shields', () => {
  const shieldsOf = (builder: BoatBuilder) => isolationOf(builder.boat).shields;
  const earthed = (...shieldAt: string[]) =>
    aBoat().change((boat) => {
      for (const bus of boat.buses) bus.shieldAt = shieldAt;
    });

  it('of a bus are earthed at its feed where nobody says otherwise', () => {
    expect(shieldsOf(aBoat())).toMatchObject([{ id: 'nav', verdict: 'planned', plannedAt: expect.any(String) }]);
  });

  it('are told by the number of places where they meet earth', () => {
    expect(shieldsOf(earthed('locker'))).toMatchObject([{ verdict: 'once' }]);
    expect(shieldsOf(earthed('locker', 'helm'))).toMatchObject([
      { verdict: 'twice', earths: [{ at: 'helm' }, { at: 'locker' }] },
    ]);
    expect(shieldsOf(earthed())).toMatchObject([{ verdict: 'nowhere', earths: [] }]);
  });

  it('a unit that lays it on its minus is an earth like any other', () => {
    const boat = earthed('locker').sheet('small-display', (sheet) => {
      sheet.earthing = { shieldTo: 'negative' };
    });
    expect(shieldsOf(boat)).toMatchObject([
      {
        verdict: 'twice',
        earths: [
          { at: 'display', by: 'unit' },
          { at: 'locker', by: 'file' },
        ],
      },
    ]);
  });

  it('of a pair are earthed at the one unit that is named', () => {
    const pair = (...units: string[]) =>
      aBoat().change((boat) => {
        for (const join of boat.joins) if (join.kind === 'nmea0183') join.shieldAt = units;
      });
    const of = (builder: BoatBuilder) => shieldsOf(builder).find(({ kind }) => kind === 'cable')?.verdict;
    expect([of(pair('converter')), of(pair('converter', 'radio')), of(pair()), of(aBoat())]).toEqual([
      'once',
      'twice',
      'nowhere',
      undefined,
    ]);
  });

  it('of a pair that a steel boat’s hull meets through a case is a way of the minus as well', () => {
    const boat = aSteelBoat()
      .sheet('fixed-radio', (sheet) => {
        sheet.earthing = { body: 'metal', bodyTo: 'nothing', shieldTo: 'body' };
      })
      .unit('radio', { mount: 'metal' })
      .change((draft) => {
        for (const join of draft.joins) if (join.kind === 'nmea0183') join.shieldAt = ['converter'];
      });
    expect(shieldsOf(boat).find(({ kind }) => kind === 'cable')?.verdict).toBe('twice');
    expect(isolationOf(boat.boat).ways).toMatchObject([
      { meets: 'hull', cure: { bond: 'earth:radio-position:converter', cost: 0 } },
    ]);
  });
});

describe('two supplies', () => {
  it('behind an isolated converter are two negatives; behind one that is not they are one', () => {
    expect(isolationOf(twoSupplies(undefined).boat).negatives.map(({ id }) => id)).toEqual([
      'negative:bus-supply',
      'negative:house',
    ]);
    const one = twoSupplies(undefined).change((boat) => {
      for (const converter of boat.supply.dcdc) converter.isolated = false;
    });
    expect(isolationOf(one.boat).negatives).toMatchObject([{ id: 'negative:house', sources: ['bus-supply', 'house'] }]);
  });

  it('are tied by a bus port that is said not to be isolated, and by none of which nothing is said', () => {
    expect(waysOf(twoSupplies(undefined))).toEqual([]);
    expect(waysOf(twoSupplies(true))).toEqual([]);
    expect(isolationOf(twoSupplies(false).boat).ways).toMatchObject([
      { meets: 'supply', bonds: [{ kind: 'signal', about: ['display'] }], sure: true },
    ]);
  });
});
