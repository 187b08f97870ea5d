import { describe, expect, it } from 'vitest';
import { anExample } from '../../../../tests/an-example.test-helper.ts';
import { indexBoat } from '../../boat/boat-index.ts';
import { quickPlan } from '../../quick-plan.test-helper.ts';
import { headingAt } from './heading-at.ts';
import { headingField } from './heading-field.ts';
import { headingJudge } from './heading-judge.ts';
import { headingMap } from './heading-map.ts';

const boat = anExample('sandpiper');
const planned = quickPlan(boat);
const input = { index: indexBoat(boat), lines: planned.lines, feeds: planned.feeds };

describe('the map of where a heading sensor may go', () => {
  const map = headingMap(input, 'heading');

  it('shows all three verdicts, from the side on the centreline and from above at the sensor', () => {
    expect(map.views.map(({ view, atM }) => [view, atM])).toEqual([
      ['side', 0],
      ['top', input.index.places.get('fore-cabin')?.zM],
    ]);
    for (const { runs } of map.views) {
      expect(new Set(runs.map(({ verdict }) => verdict))).toEqual(new Set(['good', 'doubtful', 'not']));
    }
  });

  it('names what limits each stretch that is not good, and lists it', () => {
    const named = new Set(map.limits.map(({ id }) => id));
    for (const { verdict, by } of map.views.flatMap(({ runs }) => runs)) {
      expect(by === undefined).toBe(verdict === 'good');
      if (by !== undefined) expect(named.has(by)).toBe(true);
    }
    expect(map.limits[0]?.id).toBe('engine');
  });

  it('judges each of its stretches as a single spot is judged', () => {
    const field = headingField(input);
    const judge = headingJudge(field, 'heading');
    for (const { xM, yM, zM } of boat.places) {
      for (const [dx, dz] of [
        [0, 0],
        [0.35, 0.1],
        [-0.8, -0.3],
      ] as const) {
        const at = { xM: xM + dx, yM, zM: zM + dz };
        const whole = headingAt(field, at, { except: 'heading' });
        const quick = judge(at);
        expect(quick?.verdict ?? 'good').toBe(whole.verdict);
        if (quick !== undefined) expect(quick).toEqual(whole.near[0]);
      }
    }
  });

  it('is the same however the lists of the boat stand', () => {
    const turned = { ...boat, kit: [...boat.kit].reverse(), places: [...boat.places].reverse() };
    const again = headingMap({ ...input, index: indexBoat(turned), feeds: [...planned.feeds].reverse() }, 'heading');
    expect(again).toEqual(map);
  });
});
