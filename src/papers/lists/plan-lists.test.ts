import { describe, expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { busPins, screwTerminalPins } from '../../core/facts/plugs.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { kitList } from './kit-list.ts';
import { pinList } from './pin-list.ts';
import { planLists } from './plan-lists.ts';
import { teeList } from './tee-list.ts';
import { terminalList } from './terminal-list.ts';

const columnOf = ({ columns, rows }: ReturnType<typeof kitList>, id: string) => {
  const at = columns.findIndex((column) => column.id === id);
  return rows.map((row) => row[at]);
};

describe.each(['gannet', 'sandpiper', 'bonxie', 'wreck'])('the lists of %s', (name) => {
  const boat = anExample(name);
  const planned = quickPlan(boat);
  const lists = planLists(boat, planned);

  test('have names of their own, a cell for each column, and say what to read where there is no row', () => {
    expect(new Set(lists.map(({ id }) => id)).size).toBe(lists.length);
    for (const { id, columns, rows, empty } of lists) {
      expect(new Set(columns.map((column) => column.id)).size, id).toBe(columns.length);
      expect(empty, id).toMatch(/\.$/);
      for (const row of rows) expect(row.length, `${id}: ${row.join()}`).toBe(columns.length);
    }
  });

  test('hold figures in their columns of figures, and no word that is none', () => {
    for (const { id, columns, rows } of lists)
      for (const row of rows)
        for (const [at, cell] of row.entries()) {
          if (columns[at]?.kind === 'figure')
            expect(typeof cell, `${id} ${columns[at]?.id}`).toMatch(/number|undefined/);
          expect(String(cell ?? ''), id).not.toMatch(/undefined|NaN|Infinity|\[object/);
        }
  });

  test('mark no two positions of a terminal block alike', () => {
    const marks = terminalList(boat, planned).rows.map(([place, mark]) => `${place} ${mark}`);
    expect(new Set(marks).size).toBe(marks.length);
  });

  test('name each trunk from one terminator to the other, each drop with its label', () => {
    const list = teeList(boat, planned);
    const tees = planned.buses.flatMap(({ walk }) => walk.flatMap((step) => step.tees));
    expect(list.rows).toHaveLength(tees.length + 2 * planned.buses.length);
    const labelled = columnOf(list, 'drop').filter((label) => label !== undefined);
    expect(labelled).toHaveLength(planned.lines.filter(({ kind }) => kind === 'drop').length);
  });
});

test('the pins of a bus plug are those of common practice, with the other numbers of a screw terminal beside them', () => {
  const boat = anExample('gannet');
  const { rows, says } = pinList(boat, quickPlan(boat));
  const bus = rows.filter(([plug]) => String(plug).startsWith('micro bus plug'));
  expect(bus.slice(0, 5).map(([, , pin, signal, colour]) => [Number(pin), signal, colour])).toEqual(
    busPins.pins.map(({ pin, signal, colour }) => [pin, signal, colour]),
  );
  for (const [, , pin, signal, , elsewhere] of bus) {
    const screw = screwTerminalPins.pins.find((other) => other.signal === signal);
    expect(elsewhere).toBe(`screw terminal ${screw?.pin}`);
    if (signal !== 'CAN high') expect(Number(pin), String(signal)).not.toBe(screw?.pin);
  }
  expect(says).toContain('never carry its numbers over');
});

test('the kit list tells units by what was read off them, what goes ashore last', () => {
  const { boat } = aBoat().unit('display', { fate: 'goes', aboard: { serial: 'SN 4711', software: '2.1' } });
  const list = kitList(boat);
  expect(columnOf(list, 'fate').at(-1)).toBe('goes ashore');
  expect(columnOf(list, 'serial').at(-1)).toBe('SN 4711');
});
