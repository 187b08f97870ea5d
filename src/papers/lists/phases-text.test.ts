import { describe, expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { plan } from '../../core/plan.ts';
import { tableCsv } from '../table/table-csv.ts';
import { phaseList } from './phase-list.ts';
import { phasesPaper, phasesText } from './phases-text.ts';

const twoPhases = aBoat().unit('compass', { phase: 2 }).boat;
const textOf = (boat: Boat): string => phasesText(boat, plan(boat, new Map())).join('\n');

describe('the phases in the text of a plan', () => {
  test('a refit in one go says nothing of phases, and its paper says why', () => {
    expect(textOf(aBoat().boat)).toBe('');
    expect(phasesPaper(aBoat().boat, plan(aBoat().boat, new Map()))).toContain('Everything comes in one phase.');
  });

  test('two phases: what comes, what arrives later only, what phasing costs, what to provide', () => {
    const text = textOf(twoPhases);
    expect(text).toContain('Phase 1: 3 units come. 2 of 3 readings arrive at the screens aboard.');
    expect(text).toContain('- Comes in phase 2 only: heading at Helm display (a must).');
    expect(text).toMatch(/Phasing costs (nothing|\d+\.\d\d\u00A0EUR) in parts/);
    expect(text).toContain('- 1 tee left free and capped on Navigation bus at');
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  test('the paper and the CSV list what each phase buys', () => {
    const planned = plan(twoPhases, new Map());
    expect(phasesPaper(twoPhases, planned)).toMatch(/TO BUY IN PHASE 2\n\[ \] 1 x Heading sensor/);
    const rows = tableCsv(phaseList(twoPhases, planned)).split('\r\n');
    const bought = planned.phases?.phases.flatMap(({ buy }) => buy).length ?? 0;
    expect(rows.filter((row) => /^\d+,buy,/.test(row))).toHaveLength(bought);
    expect(rows).toContainEqual(expect.stringMatching(/^1,provide early,1 tee left free/));
  });
});
