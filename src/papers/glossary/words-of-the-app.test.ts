import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { type Boat, waySchema } from '../../core/boat/boat-schema.ts';
import { lineKinds } from '../../core/boat/line-kinds.ts';
import { protocols, referenceSchema } from '../../core/boat/sheet.ts';
import { readingWords } from '../../core/facts/reading-words.ts';
import { levels } from '../../core/plan-shape.ts';
import { rules } from '../../core/rules/index.ts';
import { boatFromPattern } from '../../core/starting/boat-from-pattern.ts';
import { boatPatterns } from '../../core/starting/patterns/index.ts';
import { connectorWords } from '../cards/connector-words.ts';
import { languageWords } from '../cards/language-words.ts';
import { aBus } from '../lists/a-plan.test-helper.ts';
import { backboneFigures } from '../lists/backbone-figures.ts';
import { codeOf } from '../sheet/line-code.ts';
import { termsIn } from './explain.ts';
import { onlyWhere } from './found-in.ts';
import { glossary, termOf } from './glossary.ts';

const unexplained = (words: readonly string[]): string[] =>
  words.filter((word) => termsIn([word], [word]).length === 0);

/** Words a stranger to boats and wires knows as well. */
const plain = new Set([
  'open',
  'mast',
  'video',
  'devices',
  'messages',
  'price',
  'ground',
  'water',
  'keel',
  'waterline',
]);

describe('every trade word the app shows is explained', () => {
  test('the readings', () => {
    expect(unexplained(Object.values(readingWords))).toEqual([]);
  });

  test('the languages and the kinds of line', () => {
    expect(
      unexplained(protocols.map((protocol) => languageWords[protocol])).filter((word) => !plain.has(word)),
    ).toEqual([]);
    expect(unexplained(lineKinds.map((kind) => codeOf(kind).words)).filter((word) => !plain.has(word))).toEqual([]);
  });

  test('the levels of findings, the references, the figures of a backbone, what a reading rests on', () => {
    const figures = backboneFigures({ boat: aBoat().boat, bus: aBus() }).map(({ name }) => name);
    const rests = ['typical sheet', 'by the manual', 'by recording', 'proved', 'rests on', 'backup', 'finding'];
    const words = [...levels, ...referenceSchema.options, ...figures, ...rests];
    expect(unexplained(words).filter((word) => !plain.has(word) && word !== 'lowest volts')).toEqual([]);
  });

  test('the kinds of way and of panel circuit', () => {
    const kinds = waySchema.shape.kind.options;
    expect(unexplained(kinds).filter((word) => !plain.has(word))).toEqual([]);
    expect(unexplained(['breaker', 'slow breaker', 'fuse', 'live fuse'])).toEqual([]);
  });

  test('the connectors of the demo boats', () => {
    const of = (name: string): Boat =>
      JSON.parse(readFileSync(new URL(`../../../examples/${name}/${name}.boat.json`, import.meta.url), 'utf8'));
    const plugs = ['gannet', 'sandpiper', 'bonxie', 'wreck'].flatMap((name) =>
      of(name).sheets.flatMap((one) => one.plugs),
    );
    const words = new Set(plugs.map((plug) => connectorWords({ ...plug, gender: 'none' })));
    const codes = [...words].filter((word) => /[A-Z]{2}|\d/.test(word));
    expect(codes.length).toBeGreaterThan(3);
    expect(unexplained(codes)).toEqual([]);
  });

  test('every abbreviation in the title of a rule', () => {
    const short = rules.flatMap(({ title }) => [...title.matchAll(/\b[A-Z]{2,}(?:-\d+)?\b/g)].map(([word]) => word));
    expect([...new Set(short)].filter((word) => termOf(word) === undefined)).toEqual([]);
  });
});

describe('the parts of a boat', () => {
  const places = boatPatterns.flatMap(({ id }) =>
    boatFromPattern({ pattern: id, name: id }).places.map(({ name }) => name),
  );
  const found = new Set(termsIn(places).map(({ word }) => word));

  test('are explained where the hull patterns name them', () => {
    const parts = ['transom', 'lazarette', 'quarter berth', 'stern rail', 'spreader', 'headliner', 'flybridge'];
    const inside = ['chain locker', 'saloon', 'sole', 'dash', 'arch', 'centreline', 'console', 'helm', 'wheelhouse'];
    const named = [...parts, ...inside].filter((word) => places.some((name) => name.includes(word)));
    expect(named.length).toBeGreaterThan(10);
    expect(named.filter((word) => !found.has(word))).toEqual([]);
  });

  test('and her measures are explained by name, her kinds in the words of the first page', () => {
    expect(unexplained(['beam', 'draft', 'air draft'])).toEqual([]);
    const kinds = termsIn(['sloop, mast on deck', 'ketch', 'pilothouse motorboat', 'trawler', 'rigid inflatable']);
    expect(kinds.map(({ word }) => word)).toEqual(['sloop', 'ketch', 'wheelhouse', 'trawler', 'rigid inflatable']);
  });

  test('the words of quote, walk-round and comparison too', () => {
    const words = [
      'quote',
      'change order',
      'contingency',
      'exclusion',
      'days to come',
      'walk-round',
      'hull pattern',
      'wiring',
    ];
    expect(unexplained(words)).toEqual([]);
    expect(termsIn(['On top of the hours', '14 days to come']).map(({ word }) => word)).toEqual([
      'contingency',
      'days to come',
    ]);
    expect(termsIn(['The first draft of the quote is on the way.'])).toEqual([]);
  });
});

describe('the glossary', () => {
  test('explains each word in one sentence, without its own word alone', () => {
    for (const { word, meaning } of glossary) {
      expect(meaning, word).toMatch(/^\S.{8,170}$/);
      expect(meaning.endsWith('.'), word).toBe(false);
    }
  });

  test('is where every everyday word with a place of its own comes from', () => {
    expect([...onlyWhere.keys()].filter((form) => termOf(form) === undefined)).toEqual([]);
  });
});
