import { describe, expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import type { Block } from '../binder/binder-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { helmPage } from './helm-page.ts';
import { helms } from './helms.ts';
import { switchOn } from './switch-on.ts';

const gannet = anExample('gannet');
const planned = quickPlan(gannet);
const index = cardBoat(gannet);
const [fly, pilothouse] = helms(gannet, planned);

const pointsUnder = (blocks: readonly Block[], title: string): readonly string[] => {
  const at = blocks.findIndex((block) => block.kind === 'heading' && block.text === title);
  const block = blocks[at + 1];
  return block?.kind === 'points' ? block.points : [];
};

test('a boat steered from two places has two helms, each with the screens that are nearest to it', () => {
  expect([fly?.place, pilothouse?.place]).toEqual(['fly-dash', 'helm-dash']);
  expect(fly?.screens).toContain('mfd-fly');
  expect(fly?.screens).not.toContain('mfd-helm');
});

test('a boat of which nobody said where she is steered has a helm at each display', () => {
  const places = helms(gannet, { steering: [] }).map(({ place }) => place);
  expect(places).toEqual(['fly-dash', 'helm-dash']);
});

test('the plotter of a small boat goes with her tiller', () => {
  const boat = anExample('sandpiper');
  const [tiller, ...others] = helms(boat, quickPlan(boat));
  expect(others).toEqual([]);
  expect(tiller?.screens).toContain('plotter');
});

describe('the page of a helm', () => {
  const blocks = fly === undefined ? [] : helmPage(index, planned, fly);

  test('says first what surely frees the helm, and warns of what does not', () => {
    const [first, second] = pointsUnder(blocks, 'Get the helm back from the pilot');
    expect(first).toBe('Pilot off by the hard-wired switch, here.');
    expect(second).toContain('Do not rely on it: it needs the network.');
  });

  test('names the screen that keeps the spot of a swimmer, and the radios', () => {
    const says = pointsUnder(blocks, 'Man overboard').join(' ');
    expect(says).toContain('9-inch multifunction display');
    expect(says).toContain('channel 16');
    expect(says).toContain('never a test');
  });

  test('tells for each vital thing what is left, as the blackout table has it', () => {
    const table = blocks.find((block) => block.kind === 'table' && block.table.id.startsWith('fallback'));
    const rows = table?.kind === 'table' ? table.table.rows : [];
    expect(rows.map(([what]) => what)).toEqual(['Depth', 'Heading', 'Position', 'Radio']);
    expect(rows.find(([what]) => what === 'Heading')?.[1]).toContain('compass');
  });

  test('says of what has no breaker of its own what it lives on', () => {
    const table = blocks.find((block) => block.kind === 'table' && block.table.id.startsWith('dark'));
    const rows = table?.kind === 'table' ? table.table.rows : [];
    expect(rows.find(([unit]) => String(unit).startsWith('old pilot head'))?.[1]).toMatch(
      /^lives on old pilot computer/,
    );
  });

  test('gives each dark screen its breaker and another to look at', () => {
    const table = blocks.find((block) => block.kind === 'table' && block.table.id.startsWith('dark'));
    const rows = table?.kind === 'table' ? table.table.rows : [];
    const row = rows.find(([screen]) => String(screen).startsWith('9-inch'));
    expect(row?.[1]).toMatch(/^f1, 3 A, panel fly-fuses/);
    expect(row?.[2]).toContain('12-inch multifunction display');
  });
});

test('the bus is switched on before what is on it, the screens after, the pilot last', () => {
  const rows = pilothouse === undefined ? [] : switchOn(index, planned, pilothouse);
  const turnOf = (wakes: string): number => rows.findIndex((row) => row.wakes.some((name) => name.startsWith(wakes)));
  expect(turnOf('Navigation bus')).toBe(0);
  expect(turnOf('24-inch')).toBeLessThan(turnOf('12-inch multifunction'));
  expect(turnOf('12-inch multifunction')).toBeLessThan(turnOf('old pilot computer'));
  expect(new Set(rows.map(({ panel, circuit }) => `${panel}.${circuit}`)).size).toBe(rows.length);
});

test('a tiller pilot is switched on last as well, whatever its kind is called', () => {
  const boat = anExample('sandpiper');
  const own = quickPlan(boat);
  const [tiller] = helms(boat, own);
  const rows = tiller === undefined ? [] : switchOn(cardBoat(boat), own, tiller);
  expect(rows.at(-1)?.wakes.join()).toMatch(/^tiller pilot/);
});
