import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { blackoutTable } from '../src/core/blackouts/blackout-table.ts';
import type { Boat } from '../src/core/boat/boat-schema.ts';
import { readBoat } from '../src/core/boat/read-boat.ts';
import { writeBoat } from '../src/core/boat/write-boat.ts';
import { withHints } from '../src/core/cures/with-hints.ts';
import { sources } from '../src/core/facts/sources.ts';
import { lateParts, plan } from '../src/core/plan.ts';
import type { Finding } from '../src/core/plan-shape.ts';
import { planWith } from '../src/core/plan-with.ts';
import { rules } from '../src/core/rules/index.ts';
import { runRules } from '../src/core/rules/run-rules.ts';
import { faults, wreck } from '../tools/demo-boats/wreck/index.ts';

const repository = resolve(import.meta.dirname, '..');

/** What one rule finds on a boat, without the parts of a plan that no rule reads: cures that are tried, other layouts. Single points and phases are worked out for their own rules only. */
const findingsOf = (boat: Boat, rule: string): Finding[] =>
  planWith({
    ...lateParts,
    cures: withHints,
    choices: () => new Map(),
    blackouts: rule.startsWith('blackouts/') ? lateParts.blackouts : blackoutTable,
    phases: rule.startsWith('phases/') ? lateParts.phases : () => undefined,
    findings: (input) =>
      runRules(
        rules.filter(({ id }) => id === rule),
        input,
      ),
  })(boat, new Map()).findings;

const ruleFile = (id: string): string => join(repository, 'src/core/rules', `${id}.ts`);

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
  const whole = plan(wholeWreck, new Map()).findings;

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
