import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readGuide } from './read-guide.ts';
import { plainRuns, readRuns } from './read-runs.ts';

test('a page is read into headings, paragraphs, lists, tables, code and pictures', () => {
  const page = `# Lay the lines
Words that go on
in the next line.
1. Press **undo** (\`Ctrl+Z\`),
   or *leave it*.
2. See [the lines](lay-the-lines.md).

| one | two |
|---|---|
| a \\| b | **c** |

![The sheet](pictures/gannet-day.png)
\`\`\`sh
# no heading
\`\`\`
`;
  expect(readGuide(page)).toEqual([
    { kind: 'heading', level: 1, runs: [{ kind: 'words', text: 'Lay the lines' }] },
    { kind: 'paragraph', runs: [{ kind: 'words', text: 'Words that go on in the next line.' }] },
    {
      kind: 'list',
      isNumbered: true,
      items: [
        [
          { kind: 'words', text: 'Press ' },
          { kind: 'strong', runs: [{ kind: 'words', text: 'undo' }] },
          { kind: 'words', text: ' (' },
          { kind: 'code', text: 'Ctrl+Z' },
          { kind: 'words', text: '), or ' },
          { kind: 'stress', runs: [{ kind: 'words', text: 'leave it' }] },
          { kind: 'words', text: '.' },
        ],
        [
          { kind: 'words', text: 'See ' },
          { kind: 'link', to: 'lay-the-lines.md', runs: [{ kind: 'words', text: 'the lines' }] },
          { kind: 'words', text: '.' },
        ],
      ],
    },
    {
      kind: 'table',
      head: [[{ kind: 'words', text: 'one' }], [{ kind: 'words', text: 'two' }]],
      rows: [[[{ kind: 'words', text: 'a | b' }], [{ kind: 'strong', runs: [{ kind: 'words', text: 'c' }] }]]],
    },
    { kind: 'picture', says: 'The sheet', file: 'gannet-day.png' },
    { kind: 'code', text: '# no heading' },
  ]);
});

test('no word is lost or made, whatever marks stand round it', () => {
  const word = fc.stringMatching(/^[a-z]{1,8}$/);
  const marked = fc.tuple(word, fc.constantFrom('', '**', '*', '`', '[')).map(([text, mark]) => ({
    text,
    written: mark === '[' ? `[${text}](there.md)` : `${mark}${text}${mark}`,
  }));
  fc.assert(
    fc.property(fc.array(marked, { minLength: 1, maxLength: 8 }), (words) => {
      const line = words.map(({ written }) => written).join(' ');
      expect(plainRuns(readRuns(line))).toBe(words.map(({ text }) => text).join(' '));
    }),
  );
});
