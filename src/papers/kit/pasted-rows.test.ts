import { expect, test } from 'vitest';
import { readPasted } from '../../core/pasted/read-pasted.ts';
import { messageWords } from './message-words.ts';
import { pastedRows } from './pasted-rows.ts';

test('a message says its number, its name and what it tells of', () => {
  expect(messageWords({ pgn: 128267 })).toBe('PGN 128267 Water Depth: depth');
  expect(messageWords({ sentence: 'MTW' })).toBe('MTW water temperature: water temperature');
  expect(messageWords({ reading: 'sonar-picture' })).toBe('sonar picture');
  expect(messageWords({ pgn: 65345 })).toBe("PGN 65345 maker's own message");
});

test('every line that says something of a message is shown with what was understood, or why not', () => {
  const rows = pastedRows(readPasted('Transmitted\n127250 Vessel Heading 10 Hz\nsome words\n130816 to 131000'));
  expect(rows).toEqual([
    {
      number: 2,
      text: '127250 Vessel Heading 10 Hz',
      understood: ['PGN 127250 Vessel Heading: heading, variation, sent, every 100 ms'],
      doubts: [],
    },
    {
      number: 4,
      text: '130816 to 131000',
      understood: [],
      doubts: [],
      whyNot: '130816 to 131000 is a range of 185 numbers. Name those that are meant.',
    },
  ]);
});
