import { describe, expect, test } from 'vitest';
import { sources } from '../../../facts/sources.ts';
import { byCodeUnit } from '../../../units/by-code-unit.ts';
import { checks } from './index.ts';
import { plantedMessages } from './planted/messages.test-helper.ts';
import { plantedUnits } from './planted/units.test-helper.ts';
import { plantedWires } from './planted/wires.test-helper.ts';

const planted = { ...plantedUnits, ...plantedMessages, ...plantedWires };

describe('what is looked for in a watched boat', () => {
  test('each is found where it is planted, by a check that is there', () => {
    expect(Object.keys(planted).sort(byCodeUnit)).toEqual(checks.map(({ id }) => id));
  });

  test.each(Object.entries(planted))('%s', (id, { report, finds }) => {
    const { findings } = report();
    expect([...new Set(findings.map(({ check }) => check))].sort(byCodeUnit)).toEqual(finds);
    for (const finding of findings.filter(({ check }) => check === id)) {
      expect(finding.id.startsWith(`${id}:`)).toBe(true);
      expect(finding.says).toMatch(/^[^\n]+\.$/);
      expect(finding.cure).toMatch(/^[A-Z0-9][^\n]+\.$/);
      expect(finding.about).toEqual([...finding.about].sort(byCodeUnit));
    }
  });

  test('every check names sources that stand in the ledger', () => {
    for (const check of checks) for (const key of check.sources) expect(sources).toHaveProperty([key]);
  });
});
