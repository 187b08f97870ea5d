import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { knownPgns } from '../facts/pgns.ts';
import { sentences } from '../facts/sentences.ts';
import { readPasted } from './read-pasted.ts';

/** What was read, one word a message: name, way, interval. */
const read = (text: string): string[] =>
  readPasted(text).flatMap(({ found }) =>
    found.map(
      ({ pgn, sentence, way, everyMs }) =>
        `${pgn ?? sentence}${way === undefined ? '' : ` ${way}`}${everyMs === undefined ? '' : ` ${everyMs}`}`,
    ),
  );

const table = (...rows: string[]): string => rows.join('\n');

describe('tables as manuals have them', () => {
  test.each<[name: string, text: string, messages: string[]]>([
    ['a plain list', '127250, 127251 129025', ['127250', '127251', '129025']],
    ['a list with bullets', '• 128267 Water Depth\n• 128259 Speed', ['128267', '128259']],
    ['"PGN" before each', 'PGN 130306 Wind Data\nPGN: 130310\nPGN#130312', ['130306', '130310', '130312']],
    ['Tx before each', 'Tx 127250\nRx 127258', ['127250 sends', '127258 hears']],
    [
      'T/R in a cell behind',
      '127250\tVessel Heading\tT\n127258\tVariation\tR\n127251\tTurn\tT/R',
      ['127250 sends', '127258 hears', '127251 both'],
    ],
    [
      'words in a cell behind',
      '127250  Vessel Heading  Transmit\n127258  Variation  Receive',
      ['127250 sends', '127258 hears'],
    ],
    [
      'two columns with marks and tabs',
      table(
        'PGN\tDescription\tTransmit\tReceive',
        '127250\tVessel Heading\t•\t',
        '127258\tVariation\t\t•',
        '127251\tTurn\tX\tX',
      ),
      ['127250 sends', '127258 hears', '127251 both'],
    ],
    [
      'two columns the other way round',
      table('PGN\tReceived\tSent', '127250\tyes\tno', '127258\tno\tyes'),
      ['127250 hears', '127258 sends'],
    ],
    [
      'two columns with marks and spaces',
      table(
        'PGN     Name                TX   RX',
        '127250  Vessel Heading      x',
        '127258  Magnetic Variation       x',
        '129029  GNSS Position Data  x    x',
      ),
      ['127250 sends', '127258 hears', '129029 both'],
    ],
    [
      'columns with bars',
      table('| PGN | Tx | Rx |', '| 127250 | ✓ | |', '| 127251 | ✓ | ✓ |'),
      ['127250 sends', '127251 both'],
    ],
    [
      'two lists under headings',
      table('Transmitted PGNs', '59392', '127250', '', 'Received PGNs', '59392', '127258'),
      ['59392 sends', '127250 sends', '59392 hears', '127258 hears'],
    ],
    [
      'one line a way',
      'Transmit: 127250, 127251\n129025\nReceive: 127258',
      ['127250 sends', '127251 sends', '129025 sends', '127258 hears'],
    ],
    [
      'each cell in a line of its own',
      '127250\nVessel Heading\nTx\n127251\nRate of Turn\nTx/Rx',
      ['127250 sends', '127251 both'],
    ],
    ['hexadecimal', '0x1F112 heading\n1F113h turn\n0x01F801', ['127250', '127251', '129025']],
    ['a comma in the thousands', '127,250 Vessel Heading', ['127250']],
    ['a short range', '127488-127489', ['127488', '127489']],
    [
      'intervals',
      '127250 10 Hz\n128267 every 1 s\n130306 100ms\n127505 2.5 s',
      ['127250 100', '128267 1000', '130306 100', '127505 2500'],
    ],
    ['a maker’s own number', '65345 own status\nPGN 130820', ['65345', '130820']],
    ['a number no table knows, with "PGN" before it', 'PGN 126999', ['126999']],
    ['line breaks of other systems', '127250\r\n127251\r129025\u2028128267', ['127250', '127251', '129025', '128267']],
    ['spaces that do not break', 'PGN\u00a0127250', ['127250']],
    ['sentences in a row', 'GGA, RMC, VTG and ZDA', ['GGA', 'RMC', 'VTG', 'ZDA']],
    [
      'sentences with their talkers',
      '$GPGGA $IIVHW !AIVDM HCHDG --DPT xxMWV',
      ['GGA', 'VHW', 'VDM', 'HDG', 'DPT', 'MWV'],
    ],
    ['sentences with words', 'DPT Depth\nMTW  water temperature', ['DPT', 'MTW']],
    [
      'NMEA 0183 in and out',
      'NMEA 0183 output: DBT, DPT\nNMEA 0183 input: RMC',
      ['DBT sends', 'DPT sends', 'RMC hears'],
    ],
    [
      'sentences under headings',
      'Sentences received\nRMC\nAPB\nSentences transmitted\nHDG',
      ['RMC hears', 'APB hears', 'HDG sends'],
    ],
  ])('%s', (_, text, messages) => {
    expect(read(text)).toEqual(messages);
  });
});

describe('what is no message', () => {
  test.each([
    'Weight 10,500 g, 12345-678, 24 V',
    'Firmware 1.27250 of 127250.5',
    'Order no. A127250B, tel. 0049127250999',
    'DSC calls are shown on the screen',
    'THE GNSS MODULE AND THE APP',
    'www.example.org/127250',
    '',
  ])('%s', (text) => {
    const all = readPasted(text).flatMap(({ found }) => found);
    expect(all.filter(({ pgn }) => pgn !== undefined && text !== 'www.example.org/127250')).toEqual([]);
    expect(all.filter(({ sentence }) => sentence !== undefined)).toEqual([]);
  });

  test('what looks like a message and is none says why', () => {
    const whyNot = (text: string): string =>
      readPasted(text)
        .map((line) => line.whyNot ?? '')
        .join('');
    expect(whyNot('126999')).toBe(
      '126999 is no message in the tables. With "PGN" before it, it is taken as it stands.',
    );
    expect(whyNot('130816 to 130900')).toContain('a range of 85 numbers');
    expect(whyNot('129038/39')).toContain('Write the numbers in full');
    expect(whyNot('$PMKRA,1')).toContain('maker’s own sentence');
    expect(whyNot('127250')).toBe('');
  });

  test('words that name another message raise a doubt', () => {
    const [line] = readPasted('127251 Vessel Heading');
    expect(line?.found[0]?.doubt).toBe('The words name PGN 127250 (Vessel Heading); PGN 127251 is Rate of Turn.');
    expect(readPasted('127250 Vessel Heading')[0]?.found[0]?.doubt).toBeUndefined();
  });
});

/** Whether a message stands in the text by the characters it was read from. */
const standsIn = (text: string, from: string, pgn: number): boolean => {
  const said = [...from.matchAll(/0x[0-9a-f]+|[0-9a-f]+h\b|[\d,]+/gi)].map(([word]) => {
    if (/^0x/i.test(word)) return Number.parseInt(word.slice(2), 16);
    return /h$/i.test(word) ? Number.parseInt(word, 16) : Number(word.replaceAll(',', ''));
  });
  return text.includes(from) && pgn >= Math.min(...said) && pgn <= Math.max(...said);
};

const pieces = fc.oneof(
  fc.string(),
  fc.string({ unit: 'binary' }),
  fc.constantFrom(
    '\n',
    '\t',
    '  ',
    ' ',
    '-',
    ' to ',
    '/',
    ',',
    ':',
    '|',
    'PGN ',
    'Tx',
    'Rx',
    'T/R',
    '$GP',
    'x',
    '•',
    '10 Hz',
    '0x',
    'h',
  ),
  fc.integer({ min: 0, max: 140_000 }).map(String),
  fc.integer({ min: 0, max: 140_000 }).map((value) => value.toString(16)),
  fc.constantFrom(...knownPgns().map(({ pgn }) => String(pgn)), ...sentences.map(({ letters }) => letters)),
);

describe('whatever is pasted', () => {
  test('it is read without a fault, and no number is invented', () => {
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 60 }), (parts) => {
        const text = parts.join('');
        const plain = text.replaceAll('\u00a0', ' ');
        for (const { found } of readPasted(text)) {
          for (const { pgn, sentence, from } of found) {
            if (pgn !== undefined) expect([from, pgn, standsIn(plain, from, pgn)]).toEqual([from, pgn, true]);
            if (sentence !== undefined) expect(plain.includes(sentence)).toBe(true);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  test('every known PGN in a list is read once, in the order of the list', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom(...knownPgns().map(({ pgn }) => pgn)), { maxLength: 30 }),
        fc.constantFrom('\n', ', ', '  ', '\t', '; '),
        (pgns, between) => {
          expect(read(pgns.join(between))).toEqual(pgns.map(String));
        },
      ),
      { numRuns: 100 },
    );
  });

  test('a book of text is cut, and says so', () => {
    const lines = readPasted('127250\n'.repeat(5000));
    expect(lines).toHaveLength(2001);
    expect(lines.at(-1)?.whyNot).toContain('more than 2000 lines');
    expect(readPasted(`127250 ${'x'.repeat(100_000)}`)[0]?.whyNot).toContain('more than 500 characters');
    expect(read('A'.repeat(500))).toEqual([]);
  });
});
