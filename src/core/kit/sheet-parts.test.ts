import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkSheet } from '../boat/checks/check-sheet.ts';
import type { Sheet } from '../boat/sheet.ts';
import { typicalSheets } from '../facts/sheets/index.ts';
import { isSameSheet } from './sheet-from-manual.ts';
import { tidySheet } from './tidy-sheet.ts';
import { turnBetween } from './turn-between.ts';
import { withPart } from './with-part.ts';
import { withoutPort } from './without-port.ts';

const bare: Sheet = { id: 'bare', name: 'Bare', kind: 'display', source: 'manual', plugs: [], ports: [] };

test('a part is put in, changed, and stands nowhere once it is not known', () => {
  const wet = withPart(bare, 'ipCode', 'IP67');
  expect(wet).toEqual({ ...bare, ipCode: 'IP67' });
  expect(withPart(wet, 'ipCode', undefined)).toEqual(bare);
  expect(withPart(bare, 'ipCode', undefined)).toEqual(bare);
});

test('a sheet that loses any of its ports names it nowhere any more', () => {
  const of = fc.constantFrom(...typicalSheets).filter(({ ports }) => ports.length > 0);
  fc.assert(
    fc.property(of, fc.nat(), (sheet, at) => {
      const gone = sheet.ports[at % sheet.ports.length]?.id ?? '';
      const left = withoutPort(sheet, gone);
      expect(left.ports).toHaveLength(sheet.ports.length - 1);
      expect(checkSheet(left, [])).toEqual([]);
    }),
  );
});

test('what forms leave behind that says nothing goes: empty lists, a network of one port', () => {
  const port = { id: 'net', protocol: 'wifi', role: 'both', hears: [] } as const;
  const left: Sheet = {
    ...bare,
    ports: [
      { ...port, hears: [{ reading: 'depth', wants: {} }] },
      { ...port, id: 'other', hears: [] },
    ],
    plugs: [{ id: 'plug', connector: 'leads', gender: 'none', conductors: [] }],
    together: [['net']],
    turns: [],
    power: [],
    earthing: {},
  };
  expect(tidySheet(left)).toEqual({
    ...bare,
    ports: [
      { id: 'net', protocol: 'wifi', role: 'both', hears: [{ reading: 'depth' }] },
      { id: 'other', protocol: 'wifi', role: 'both', hears: [] },
    ],
    plugs: [{ id: 'plug', connector: 'leads', gender: 'none' }],
  });
});

test('no typical sheet says anything that is tidied away', () => {
  expect(typicalSheets.filter((sheet) => !isSameSheet(tidySheet(sheet), sheet)).map(({ id }) => id)).toEqual([]);
});

test('a converter may carry what the one port hears and the other sends', () => {
  const ports: Sheet['ports'] = [
    { id: 'in', protocol: 'nmea0183', role: 'listen', hears: [{ sentence: 'HDG' }, { sentence: 'DPT' }] },
    { id: 'out', protocol: 'nmea2000', role: 'talk', sends: [{ pgn: 127_250 }, { pgn: 129_025 }] },
  ];
  expect(turnBetween({ ports }, { fromPort: 'in', toPort: 'out' })).toEqual({
    fromPort: 'in',
    toPort: 'out',
    carries: [{ reading: 'heading' }, { reading: 'variation' }],
  });
  expect(turnBetween({ ports }, { fromPort: 'out', toPort: 'in' }).carries).toEqual([]);
});

test('of every typical converter each turn carries no more than its ports allow', () => {
  const turns = typicalSheets.flatMap((sheet) => (sheet.turns ?? []).map((turn) => ({ sheet, turn })));
  expect(turns.length).toBeGreaterThan(5);
  for (const { sheet, turn } of turns) {
    const may = new Set(turnBetween(sheet, turn).carries.map(({ reading }) => reading));
    expect([sheet.id, turn.carries.filter(({ reading }) => !may.has(reading))]).toEqual([sheet.id, []]);
  }
});
