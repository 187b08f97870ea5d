import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { aBoat } from '../boat/a-boat.test-helper.ts';
import { indexBoat } from '../boat/boat-index.ts';
import type { Boat } from '../boat/boat-schema.ts';
import type { QuoteTerms } from '../boat/quote.ts';
import { labour } from '../facts/labour.ts';
import { typicalPrices } from '../facts/prices.ts';
import { hoursOfTask, type QuoteTask, quoteTasks } from '../facts/quote-figures.ts';
import { plan } from '../plan.ts';
import type { LineEntry, Plan } from '../plan-shape.ts';
import { hourLines, sumOfHours } from './hour-lines.ts';
import { contingencyOf, quoteOf } from './quote-of.ts';
import type { HourLine, QuoteSums, Work } from './quote-shape.ts';
import { workToDo } from './work-to-do.ts';

const tern = aBoat().boat;
const planned = plan(tern, new Map());
const usual = { ...typicalPrices };

const works = (counts: Partial<Record<QuoteTask, number>>): Work[] =>
  quoteTasks.flatMap((task) => (counts[task] === undefined ? [] : [{ task, count: counts[task], phase: 1 }]));

const withQuote = (quote: QuoteTerms, boat: Boat = tern): Boat => ({ ...boat, quote });

const sumOf = (quoted: readonly HourLine[], end: 'least' | 'most'): number =>
  quoted.reduce((sum, { cost }) => sum + cost[end], 0);

describe('hours', () => {
  test('an owner takes 39.0 to 66.3 hours for a small refit with 30 % on top (PW-86, practice; computed)', () => {
    const work = works({
      survey: 1,
      'remove-display': 2,
      'flush-mount': 2,
      'power-feed': 3,
      'backbone-10': 10,
      commission: 1,
    });
    const { least, most } = sumOfHours(hourLines(work, { by: 'owner' }, 0));
    const pct = contingencyOf(withQuote({ contingencyPct: 30 }));
    expect(least * (1 + pct.least / 100)).toBeCloseTo(39, 6);
    expect(most * (1 + pct.most / 100)).toBeCloseTo(66.3, 6);
  });

  test('an old boat takes 30 to 50 % on top unless the file says otherwise (power-labour, practice)', () => {
    expect(contingencyOf(tern)).toMatchObject({ least: 30, most: 50, isSet: false });
    expect(contingencyOf(withQuote({ contingencyPct: 12 }))).toMatchObject({ least: 12, most: 12, isSet: true });
  });

  test('every task of the table of labour is one of a quote, and each has hours', () => {
    expect(quoteTasks).toEqual(expect.arrayContaining(labour.map(({ id }) => id)));
    for (const task of quoteTasks) expect(hoursOfTask(task).professionalH[1]).toBeGreaterThanOrEqual(0);
  });

  test('set hours take the place of the usual ones and say why', () => {
    const set = { hours: [{ task: 'power-feed', eachH: 0.75, reason: 'All from one panel.' }] } as const;
    const [line] = hourLines(works({ 'power-feed': 4 }), { ...set, hours: [...set.hours] }, 8000);
    expect(line).toMatchObject({
      hoursH: { least: 3, most: 3 },
      cost: { least: 24_000, most: 24_000 },
      set: 'All from one panel.',
    });
  });

  test('three feeds of a professional at 75.00 are 225.00 to 337.50', () => {
    const [line] = hourLines(works({ 'power-feed': 3 }), {}, 7500);
    expect(line?.cost).toEqual({ least: 22_500, most: 33_750 });
  });
});

describe('sums', () => {
  const terms = fc.record({
    by: fc.constantFrom('professional' as const, 'owner' as const),
    contingencyPct: fc.integer({ min: 0, max: 2000 }).map((tenths) => tenths / 10),
    hours: fc.uniqueArray(
      fc.record({
        task: fc.constantFrom(...quoteTasks),
        eachH: fc.integer({ min: 0, max: 999 }).map((c) => c / 100),
        reason: fc.constant('So.'),
      }),
      { selector: ({ task }) => task, maxLength: 4 },
    ),
  });
  const check = ({ parts, labour: work, contingency, total }: QuoteSums): void => {
    for (const end of ['least', 'most'] as const) {
      expect(total[end]).toBe(parts + work[end] + contingency[end]);
      expect(Number.isInteger(total[end])).toBe(true);
    }
  };

  test('add up in whole hundredths at either end, whatever the terms and the phases', () => {
    fc.assert(
      fc.property(terms, fc.nat(20_000), fc.constantFrom(1, 2), (quote, hour, phase) => {
        const kit = tern.kit.map((unit, at) => (unit.fate === 'comes' && at % 2 === 0 ? { ...unit, phase } : unit));
        const { source: _, ...prices } = usual;
        const quoted = quoteOf({ boat: { ...tern, kit, quote, prices: { ...prices, hour } }, plan: planned });
        check(quoted.sums);
        for (const own of quoted.phases) {
          check(own.sums);
          for (const end of ['least', 'most'] as const) expect(sumOf(own.hours, end)).toBe(own.sums.labour[end]);
        }
        for (const end of ['least', 'most'] as const) {
          expect(quoted.phases.reduce((sum, { sums }) => sum + sums.total[end], 0)).toBe(quoted.sums.total[end]);
          expect(sumOf(quoted.hours, end)).toBe(quoted.sums.labour[end]);
          expect(quoted.sums.total.most).toBeGreaterThanOrEqual(quoted.sums.total.least);
        }
        expect(quoted.partsByKind.reduce((sum, { cost }) => sum + cost, 0)).toBe(quoted.sums.parts);
      }),
      { numRuns: 40 },
    );
  });

  test('an owner who does the work pays for the parts only, and sees the hours', () => {
    const quoted = quoteOf({ boat: withQuote({ by: 'owner' }), plan: planned });
    expect(quoted.sums.total).toEqual({ least: quoted.sums.parts, most: quoted.sums.parts });
    expect(quoted.sums.hoursH.most).toBeGreaterThan(quoteOf({ boat: tern, plan: planned }).sums.hoursH.most);
  });

  test('parts are the order of the plan to the hundredth', () => {
    const { sums } = quoteOf({ boat: tern, plan: planned });
    expect(sums.parts).toBe(planned.shopping.reduce((sum, { count, each = 0 }) => sum + Math.round(count * each), 0));
    expect(sums.parts).toBeGreaterThan(0);
  });
});

describe('more work', () => {
  const kinds = [
    'display',
    'instrument',
    'radar',
    'vhf-radio',
    'radio-antenna',
    'pilot-computer',
    'heading-sensor',
    'ais',
  ];
  const boatWith = (units: readonly { kind: string; fate: 'comes' | 'goes' | 'stays'; place: string }[]): Boat => ({
    ...tern,
    sheets: kinds.map(
      (kind) => ({ ...tern.sheets[0], id: kind, kind, name: kind, ports: [], plugs: [] }) as Boat['sheets'][number],
    ),
    kit: units.map(({ kind, ...own }, at) => ({ id: `u${at}`, name: kind, sheet: kind, ...own })),
  });
  const unit = fc.record({
    kind: fc.constantFrom(...kinds),
    fate: fc.constantFrom('comes' as const, 'goes' as const, 'stays' as const),
    place: fc.constantFrom(...tern.places.map(({ id }) => id)),
  });
  const line = fc.record({
    kind: fc.constantFrom<LineEntry['kind'][]>('feed', 'drop', 'trunk', 'ethernet', 'coax'),
    ways: fc.subarray(
      tern.ways.map(({ id }) => id),
      { maxLength: 2 },
    ),
    longestM: fc.integer({ min: 1, max: 40 }),
  });
  const planOf = (lines: readonly Pick<LineEntry, 'kind' | 'ways' | 'longestM'>[]): Plan => ({
    ...planned,
    lines: lines.map((own, at) => ({
      ...own,
      id: `l${at}`,
      from: 'main',
      to: 'nav',
      places: [],
      lengthM: own.longestM,
      guessed: false,
    })),
  });
  const hours = (boat: Boat, own: Plan, by: 'professional' | 'owner') =>
    sumOfHours(hourLines(workToDo(indexBoat(boat), own, []), { by }, 0));

  test('hours never fall when a unit or a cable is added', () => {
    fc.assert(
      fc.property(
        fc.array(unit, { maxLength: 9 }),
        fc.array(line, { maxLength: 6 }),
        unit,
        line,
        fc.constantFrom('professional' as const, 'owner' as const),
        (units, lines, more, cable, by) => {
          const before = hours(boatWith(units), planOf(lines), by);
          for (const after of [
            hours(boatWith([...units, more]), planOf(lines), by),
            hours(boatWith(units), planOf([...lines, cable]), by),
          ]) {
            expect(after.least).toBeGreaterThanOrEqual(before.least);
            expect(after.most).toBeGreaterThanOrEqual(before.most);
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  test('a cable longer than ten metres is pulled once for each ten begun; one in the mast is a mast cable', () => {
    const way = tern.ways.find(({ kind }) => kind !== 'mast')?.id ?? '';
    const long = planOf([{ kind: 'ethernet', ways: [way], longestM: 23 }]);
    const boat = { ...tern, kit: [] };
    expect(workToDo(indexBoat(boat), long, [])).toContainEqual({ task: 'pull-10m', count: 3, phase: 1, of: 'l0' });
    const aloft = { ...boat, ways: boat.ways.map((own) => (own.id === way ? { ...own, kind: 'mast' as const } : own)) };
    expect(workToDo(indexBoat(aloft), long, [])).toContainEqual({
      task: 'mast-cable-up',
      count: 1,
      phase: 1,
      of: 'l0',
    });
    const down = withQuote({ mast: 'down' }, aloft);
    expect(workToDo(indexBoat(down), long, []).map(({ task }) => task)).toContain('mast-cable-down');
  });

  test('a way with hours of its own is opened once, however many cables it takes', () => {
    const [way] = tern.ways;
    const boat = { ...tern, kit: [], ways: tern.ways.map((own) => (own === way ? { ...own, hours: 2.5 } : own)) };
    const two = planOf([1, 2].map(() => ({ kind: 'ethernet', ways: [way?.id ?? ''], longestM: 4 })));
    const lines = hourLines(workToDo(indexBoat(boat), two, []), {}, 0);
    expect(lines.find(({ task }) => task === 'open-way')).toMatchObject({
      count: 1,
      hoursH: { least: 2.5, most: 2.5 },
    });
  });

  test('a cable that lies aboard already is no work', () => {
    const old = planOf([{ kind: 'ethernet', ways: [tern.ways[0]?.id ?? ''], longestM: 4 }]);
    const kept = { ...old, lines: old.lines.map((own) => ({ ...own, kept: ['c1'] })) };
    expect(workToDo(indexBoat({ ...tern, kit: [] }), kept, [])).toEqual([]);
  });
});

describe('what she brings', () => {
  test('readings that arrive are new or kept, and the rest is told as missing', () => {
    const { gains, keeps, missing } = quoteOf({ boat: tern, plan: planned });
    expect(gains.length + keeps + missing.length).toBe(planned.readings.length);
  });

  test('an exclusion that is included after all is left out, and one’s own are added', () => {
    const { excluded, ownExclusions } = quoteOf({
      boat: withQuote({ includes: ['rig'], exclusions: ['Painting.'] }),
      plan: planned,
    });
    expect(excluded).not.toContain('rig');
    expect(excluded).toContain('mains');
    expect(ownExclusions).toEqual(['Painting.']);
  });
});
