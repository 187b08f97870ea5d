import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { explain, explainNames, termsIn } from './explain.ts';
import { glossary } from './glossary.ts';

const marked = (...texts: string[]): (string | undefined)[] =>
  explain(texts)
    .flat()
    .flatMap(({ text, term }) => (term === undefined ? [] : [`${text}: ${term.word}`]));

describe('trade words in running text', () => {
  test('the first of each in a block is marked, and no other', () => {
    expect(marked('The drop to the screen is long.', 'Shorten the drop, or move the tee.')).toEqual([
      'drop: drop',
      'tee: tee',
    ]);
  });

  test('a plural and a capital at the start of a sentence are found', () => {
    expect(marked('Terminators stand at both ends of two buses.')).toEqual(['Terminators: terminator', 'buses: bus']);
  });

  test('the longest word is found, not the one inside it', () => {
    expect(marked('All rest on typical sheets.')).toEqual(['typical sheets: typical sheet']);
  });

  test('an abbreviation is not an everyday word: NAME is, name is not', () => {
    expect(marked('Give it a name.')).toEqual([]);
    expect(marked('Two units claim one NAME.')).toEqual(['NAME: NAME']);
  });

  test('a word inside an id or a longer word is not found', () => {
    expect(marked('bus/drop-too-long', 'berth-key-port.n2k', 'busy')).not.toContain('drop: drop');
    expect(marked('drop-too-long busy backdrop')).toEqual([]);
  });

  test('port is a side of the boat, or an interface where the words round it say so', () => {
    expect(marked('radar arch, port bracket', 'to port corner of the stern rail')).toEqual([
      'arch: arch',
      'stern rail: stern rail',
    ]);
    expect(marked('joined to port in of Old radio')).toEqual(['port: port']);
    expect(marked('it is wired at its port in')).toEqual(['port: port']);
  });

  test('volts drop, a cable does not drop to a voltage', () => {
    expect(marked('the volts drop to 9 V')).toEqual(['volts drop: volts drop']);
    expect(marked('the last may drop out')).toEqual([]);
  });

  test('a name that stands alone is explained although it is an everyday word', () => {
    expect(marked('load')).toEqual([]);
    expect(explainNames(['load'])[0]?.[0]?.term?.word).toBe('load');
    expect(termsIn(['the trunk'], ['layout', 'trunk']).map(({ word }) => word)).toEqual(['layout', 'trunk']);
  });

  test('whatever the texts, their pieces joined are the texts and no word is marked twice', () => {
    const words = fc.constantFrom(...glossary.flatMap(({ forms }) => forms), 'and', ',', 'port side', '(', ' ');
    const texts = fc.array(
      fc.array(words, { maxLength: 12 }).map((list) => list.join(' ')),
      { maxLength: 4 },
    );
    fc.assert(
      fc.property(texts, (all) => {
        const pieces = explain(all);
        expect(pieces.map((list) => list.map(({ text }) => text).join(''))).toEqual(all);
        const told = pieces.flat().flatMap(({ term }) => term?.word ?? []);
        expect(new Set(told).size).toBe(told.length);
      }),
      { seed: 3, numRuns: 150 },
    );
  });
});
