import { describe, expect, it } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { indexBoat } from '../../core/boat/boat-index.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { cardBoat } from '../cards/card-boat.ts';
import type { Shape } from '../drawing/shapes.ts';
import { sensorList } from '../lists/sensor-list.ts';
import { sensorRows } from '../lists/sensor-rows.ts';
import { headingPlaceRows, headingRows } from './heading-rows.ts';
import { mapDrawing } from './map-drawing.ts';

const boat = anExample('sandpiper');
const planned = quickPlan(boat);
const names = cardBoat(boat);
const input = { index: indexBoat(boat), lines: planned.lines, feeds: planned.feeds };

const labelsOf = (shapes: readonly Shape[]): string[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? [shape.label ?? '', ...labelsOf(shape.shapes)] : []));

describe('what is said of heading sensors', () => {
  it('tells how each stands and what limits it', () => {
    const [row] = headingRows(names, planned);
    expect(row?.what).toBe(names.kit.get('heading')?.name);
    expect(row?.fact).toMatch(/^9-axis, stands well; \d\.\d\d m from .*; 2\.00 m asked for \(engine\); feeds turn it/);
  });

  it('names the best places first, and why not the others', () => {
    const rows = headingPlaceRows(names, input, { except: 'heading' });
    expect(rows).toHaveLength(boat.places.length);
    expect(rows[0]?.fact).toMatch(/^good: /);
    expect(rows.at(-1)?.fact).toMatch(/^no: /);
    expect(rows.find(({ key }) => key === 'masthead')?.fact).toContain('aloft');
    expect(rows.find(({ key }) => key === 'bow-locker')?.fact).toMatch(/^doubtful: anchor, chain or tools/);
    expect(headingPlaceRows(names, input, { most: 3 })).toHaveLength(3);
  });

  it('draws the map with all three hatchings, told to a screen reader too, and names what limits it', () => {
    const { drawing, limits } = mapDrawing({ boat, plan: planned, widthMm: 80, unit: 'heading' });
    for (const said of ['a heading sensor may go here', 'doubtful', 'not here'])
      expect(labelsOf(drawing.shapes)).toContain(said);
    expect(limits[0]?.fact).toBe('keeps one 2.00 m off (engine)');
    expect(mapDrawing({ boat, plan: planned, widthMm: 80, unit: 'heading' }).drawing).toEqual(drawing);
  });
});

describe('what is said of sensors', () => {
  it('tells what is right in figures, and which input reads them', () => {
    const row = sensorRows(names, planned).find(({ key }) => key === 'log-wheel');
    expect(row?.fact).toMatch(/ahead of the keel 0\.40 m, at least 0\.30 m/);
    expect(row?.fact).toContain('can read it');
  });

  it('is one list with a row for each thing looked at', () => {
    const { rows, columns } = sensorList(boat, planned);
    for (const row of rows) expect(row).toHaveLength(columns.length);
    const looked = rows.map(([, check]) => String(check));
    expect(looked).toEqual(expect.arrayContaining(['ahead of the keel', 'clear air']));
    expect(looked.some((check) => check.startsWith('from ') && check.endsWith('(engine)'))).toBe(true);
  });
});
