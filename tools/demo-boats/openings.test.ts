import { describe, expect, test } from 'vitest';
import { indexBoat } from '../../src/core/boat/boat-index.ts';
import type { Boat } from '../../src/core/boat/boat-schema.ts';
import type { FitEntry } from '../../src/core/fits-shape.ts';
import { plan } from '../../src/core/plan.ts';
import type { Plan } from '../../src/core/plan-shape.ts';
import { bonxie, bonxieTable } from './bonxie.ts';
import { gannet, gannetTable } from './gannet.ts';
import { sandpiper, sandpiperTable } from './sandpiper.ts';
import type { OpeningRow, Table } from './table.ts';

/** What the words of a table come to. */
const verdicts: readonly (readonly [words: RegExp, verdict: FitEntry['verdict']])[] = [
  [/^same hole/, 'same-hole'],
  [/^(fits as it is|unit stays)/, 'as-it-is'],
  [/^close/, 'close'],
  [/plate/, 'plate'],
  [/^enlarge/, 'enlarge'],
];

const wanted = ({ action }: OpeningRow): FitEntry['verdict'] | undefined =>
  verdicts.find(([words]) => words.test(action))?.[1];

const fitsOf = ({ id, count }: OpeningRow, { fits }: Plan): FitEntry[] =>
  fits.filter(({ opening }) => (count === undefined ? opening === id : opening.startsWith(`${id}-`)));

const plateWords = (fit: FitEntry, { plates }: Plan): string => {
  const outline = plates.find(({ id }) => id === fit.plate)?.outline;
  return `${outline?.widthMm} x ${outline?.heightMm} mm`;
};

describe.each<[string, Boat, Table]>([
  ['Gannet', gannet(), gannetTable()],
  ['Sandpiper', sandpiper(), sandpiperTable()],
  ['Bonxie', bonxie(), bonxieTable()],
])('the openings of %s', (_, boat, table) => {
  const planned = plan(boat, new Map());
  const index = indexBoat(boat);

  test.each(table.openings.map((row) => [row.id, row] as const))('%s comes to what was meant', (__, row) => {
    const fits = fitsOf(row, planned);
    expect(fits).toHaveLength(row.count ?? 1);
    expect([...new Set(fits.map(({ verdict }) => verdict))]).toEqual([wanted(row)]);
    const size = /\d+ x \d+ mm/.exec(row.action)?.[0];
    if (size !== undefined) expect(fits.map((fit) => plateWords(fit, planned))).toEqual([size]);
    if (row.newDepthMm !== undefined) {
      const sheets = fits.map(({ unit }) => index.sheetOf.get(unit ?? ''));
      expect(sheets.map((sheet) => (sheet?.body?.depthMm ?? 0) + (sheet?.plugsMm ?? 0))).toEqual(
        fits.map(() => row.newDepthMm),
      );
      // a stiff cable asks for more than the plugs
      for (const { behind } of fits) expect(behind?.needMm).toBeGreaterThanOrEqual(row.newDepthMm);
    }
    if (row.newBezelMm !== undefined)
      for (const { bezel } of fits) expect([bezel?.widthMm, bezel?.heightMm]).toEqual(row.newBezelMm);
  });

  test('nothing of them is a danger or a fault', () => {
    const found = planned.findings.filter(({ rule }) => rule.startsWith('fitting/'));
    expect(found.filter(({ level }) => level === 'danger' || level === 'fault')).toEqual([]);
    const doubts = found.filter(({ level }) => level === 'doubt').map(({ rule }) => rule);
    expect(doubts).toEqual(boat.name === 'Sandpiper' ? ['fitting/no-room-behind'] : []);
  });
});
