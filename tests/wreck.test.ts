import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Boat } from '../src/core/boat/boat-schema.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { writeBoat } from '../src/core/boat/write-boat.ts';
import { withHints } from '../src/core/cures/with-hints.ts';
import { sources } from '../src/core/facts/sources.ts';
import { lateParts, plan } from '../src/core/plan.ts';
import type { Finding } from '../src/core/plan-shape.ts';
import { type LateParts, planWith, withoutLateParts } from '../src/core/plan-with.ts';
import { rules } from '../src/core/rules/index.ts';
import { runRules } from '../src/core/rules/run-rules.ts';
import { faults, wreck } from '../tools/demo-boats/wreck/index.ts';

const repository = resolve(import.meta.dirname, '..');

/** The Wreck was passed on without her folder of pictures. */
const besideHer: ReadonlySet<string> = new Set();

/**
 * Parts of a plan that take long, that no other part left in looks at, and that only some rules read (by how their names begin),
 * with what they bring into it.
 */
const readByFew: readonly {
  readonly readers: readonly string[];
  readonly part: Partial<LateParts>;
  readonly brings: readonly string[];
}[] = [
  { readers: ['blackouts/'], part: { blackouts: withoutLateParts.blackouts }, brings: ['blackouts', 'vitals'] },
  { readers: ['phases/'], part: { phases: withoutLateParts.phases }, brings: ['phases'] },
  { readers: ['energy/'], part: { energy: withoutLateParts.energy }, brings: ['energy', 'unknownDraws'] },
  { readers: ['work/'], part: { work: withoutLateParts.work }, brings: ['work'] },
  { readers: ['bus/no-layout-found'], part: { mends: withoutLateParts.mends }, brings: ['mend', 'unlaid'] },
  // the work is made from what is bought, typed and tested, and the phases from what is bought
  {
    readers: ['shopping/', 'plugs/', 'ways/', 'antennas/', 'phases/', 'work/'],
    part: { order: withoutLateParts.order },
    brings: ['shopping', 'tape', 'passages', 'pieces'],
  },
  { readers: ['work/'], part: { tests: withoutLateParts.tests }, brings: ['tests'] },
  {
    readers: ['settings/', 'work/'],
    part: { sheet: withoutLateParts.sheet },
    brings: ['typed', 'shipPapers', 'airDraft', 'atSea'],
  },
];

/** The same thing, but reading one of the given names of it throws. */
const withoutNames = <Of extends object>(of: Of, names: readonly string[]): Of =>
  Object.defineProperties(
    { ...of },
    Object.fromEntries(
      names.map((name) => [
        name,
        {
          get: () => {
            throw new Error(`A rule reads ${name}, which is left out of its plan.`);
          },
        },
      ]),
    ),
  );

/**
 * What one rule finds on a boat, without the parts of a plan that it does not read: cures that are tried, other layouts, and
 * what only some rules read. Should it read one of the latter it breaks down, which is a finding too.
 */
const findingsOf = (boat: Boat, rule: string): Finding[] => {
  const leftOut = readByFew.filter(({ readers }) => !readers.some((reader) => rule.startsWith(reader)));
  const names = leftOut.flatMap(({ brings }) => brings);
  const ofLines = names.filter((name) => name === 'pieces');
  return planWith({
    ...lateParts,
    cures: withHints,
    choices: () => new Map(),
    ...Object.assign({}, ...leftOut.map(({ part }) => part)),
    findings: ({ plan: whole, ...input }) =>
      runRules(
        rules.filter(({ id }) => id === rule),
        {
          ...input,
          plan: withoutNames(
            {
              ...whole,
              buses: whole.buses.map((bus) => withoutNames(bus, names)),
              lines: whole.lines.map((line) => withoutNames(line, ofLines)),
            },
            names,
          ),
        },
      ),
  })(boat, new Map(), undefined, besideHer).findings;
};

const ruleFile = (id: string): string => join(repository, 'src/core/rules', `${id}.ts`);

test('what is left out of a plan cannot be read by mistake', () => {
  const left = withoutNames({ energy: [], lines: [] }, ['energy']);
  expect(left.lines).toEqual([]);
  expect(() => left.energy).toThrow('left out');
});

describe('each rule', () => {
  test('stands in the list once', () => {
    expect(new Set(rules.map((rule) => rule.id)).size).toBe(rules.length);
  });

  test.each(rules.map((rule) => [rule.id, rule] as const))(
    '%s has code, test, page, sources and a planted fault',
    (id, rule) => {
      expect(existsSync(ruleFile(id)), 'code').toBe(true);
      expect(existsSync(ruleFile(id).replace(/\.ts$/, '.test.ts')), 'test').toBe(true);
      const page = join(repository, 'docs/rules', `${id}.md`);
      expect(existsSync(page), 'page').toBe(true);
      expect(readFileSync(page, 'utf8')).toContain(`\`${id}\``);
      const list = readFileSync(join(repository, 'docs/rules/README.md'), 'utf8');
      expect(list, 'the list of rules, which npm run rules prints').toContain(
        `(${id}.md) · ${rule.level}: ${rule.title}`,
      );
      expect(rule.sources.length).toBeGreaterThan(0);
      for (const key of rule.sources) {
        expect(Object.keys(sources)).toContain(key);
        expect(readFileSync(page, 'utf8'), `the page names ${key}`).toContain(key);
      }
      expect(faults.map((fault) => fault.rule)).toContain(id);
    },
  );
});

describe('the wreck', () => {
  const wholeWreck = wreck();
  const whole = plan(wholeWreck, new Map(), undefined, besideHer).findings;

  test.each(faults.map((fault) => [fault.rule, fault] as const))('%s is found where it was planted', (rule, fault) => {
    const found = whole.filter((finding) => finding.rule === rule);
    expect(found.length).toBeGreaterThan(0);
    expect(found.some((finding) => fault.about.every((id) => finding.about.includes(id)))).toBe(true);
  });

  test.each(faults.map((fault) => [fault.rule] as const))(
    '%s is gone in the twin that has this one fault mended',
    (rule) => {
      expect(findingsOf(wreck(rule), rule)).toEqual([]);
    },
  );

  test('tells the source of every limit in words, never by its key', () => {
    const told = whole.flatMap(({ limit }) => (limit === undefined ? [] : [limit.source]));
    expect(told.length).toBeGreaterThan(0);
    expect(told.filter((source) => Object.hasOwn(sources, source))).toEqual([]);
  });

  test('is the file in examples', () => {
    const file = readFileSync(join(repository, 'examples/wreck/wreck.boat.json'), 'utf8');
    expect(writeBoat(readBoat(file))).toBe(writeBoat(wholeWreck));
  });

  test('with every fault mended gives no danger and no fault', () => {
    const grave = plan(wreck(...faults.map((fault) => fault.rule)), new Map()).findings.filter(
      (finding) => finding.level === 'danger' || finding.level === 'fault',
    );
    expect(grave).toEqual([]);
  });
});
