import { describe, expect, test } from 'vitest';
import { anExample } from '../../../tests/an-example.test-helper.ts';
import { drawnBoat } from '../../../tests/drawn-boat.test-helper.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { labelFigures } from '../../core/facts/label-figures.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { quickPlan } from '../../core/quick-plan.test-helper.ts';
import { type Box, contains, grown, overlaps, textBox, textsOf } from '../drawing/box.ts';
import { paperSizes } from '../pages/paper-sizes.ts';
import { type CableLabel, cableLabels } from './cable-labels.ts';
import { setLabel } from './label-content.ts';
import { labelSheets, labelTapes } from './label-geometry.ts';
import { labelList } from './label-list.ts';
import { labelFaults } from './label-notes.ts';
import { cellAt, labelPages } from './label-pages.ts';

const boatAddress = 'http://192.168.1.20:4610/#/boat/gannet';
const dateIso = '2026-11-26';

const planned = (boat: Boat): { boat: Boat; plan: Plan } => ({ boat, plan: quickPlan(boat) });
const examples = ['gannet', 'sandpiper', 'bonxie', 'wreck'].map((name) => ({ name, ...planned(anExample(name)) }));
const drawn = Array.from({ length: 12 }, (_, seed) => ({ name: `drawn boat ${seed}`, ...planned(drawnBoat(seed)) }));

/** A path reaches from the least to the greatest of its corners; the codes are all right angles. */
const pathBox = (d: string): Box => {
  const boxes = [...d.matchAll(/M([\d.-]+) ([\d.-]+)h([\d.]+)v([\d.]+)/g)].map(([, x, y, w, h]) => ({
    leftMm: Number(x),
    topMm: Number(y),
    rightMm: Number(x) + Number(w),
    bottomMm: Number(y) + Number(h),
  }));
  return {
    leftMm: Math.min(...boxes.map((box) => box.leftMm)),
    topMm: Math.min(...boxes.map((box) => box.topMm)),
    rightMm: Math.max(...boxes.map((box) => box.rightMm)),
    bottomMm: Math.max(...boxes.map((box) => box.bottomMm)),
  };
};

describe.each([...examples, ...drawn])('the labels of $name', ({ boat, plan: own }) => {
  const labels = cableLabels(boat, own, { boatAddress, dateIso });

  test('are as many as are bought', () => {
    const bought = own.shopping.find(({ id }) => id === 'cable-label')?.count ?? 0;
    expect(labels).toHaveLength(bought);
    expect(labelList(boat, own).rows).toHaveLength(bought);
  });

  test('are two at least for each line, all with its one id, and go round its cable', () => {
    for (const line of own.lines) {
      const its = labels.filter((label) => label.line === line.id);
      expect(its.filter(({ spot }) => spot.at === 'end')).toHaveLength(2);
      expect(new Set(its.map(({ id }) => id))).toEqual(new Set([line.label ?? line.nextLabel]));
      for (const { wrapMm, outsideMm } of its) expect(wrapMm).toBeCloseTo(Math.PI * outsideMm + 6, 9);
    }
  });

  test.each([...labelSheets, ...labelTapes])(
    'stand each within what is printed of $id, and none on another',
    (geometry) => {
      const { pages, placed } = labelPages(labels, geometry, { boat: boat.name, startAt: 3 });
      expect(pages.flatMap(({ insets }) => insets)).toHaveLength(labels.length);
      // gathered, as to expect something of each of a million boxes takes longer than to draw them
      const amiss: string[] = [];
      const see = (isRight: boolean, what: string): void => void (isRight || amiss.push(what));
      for (const { label, set } of placed) {
        see(set.fits, `${label.id} does not fit`);
        see(textsOf(set.shapes)[0]?.text === label.id, `${label.id} does not begin with its id`);
      }
      for (const [number, { insets, widthMm, heightMm }] of pages.entries()) {
        const boxes = insets.map(({ drawing, xMm, yMm }, place): Box => {
          const room = { leftMm: 0, topMm: 0, rightMm: drawing.widthMm, bottomMm: drawing.heightMm };
          const texts = textsOf(drawing.shapes).map(textBox);
          const codes = drawing.shapes.flatMap((shape) => (shape.kind === 'path' ? [pathBox(shape.d)] : []));
          const at = `label ${place} of page ${number}`;
          for (const box of [...texts, ...codes]) see(contains(grown(room, 0.02), box), `${at} goes past its edge`);
          for (const [first, box] of codes.entries())
            for (const other of [...texts, ...codes.slice(first + 1)])
              see(!overlaps(box, other), `${at} is overprinted`);
          return { leftMm: xMm, topMm: yMm, rightMm: xMm + drawing.widthMm, bottomMm: yMm + drawing.heightMm };
        });
        const page = { leftMm: 0, topMm: 0, rightMm: widthMm, bottomMm: heightMm };
        for (const [at, box] of boxes.entries()) {
          see(contains(grown(page, 0.01), box), `label ${at} goes past page ${number}`);
          for (const other of boxes.slice(at + 1, at + 8))
            see(!overlaps(box, other), `label ${at} of page ${number} is covered`);
        }
      }
      expect(amiss).toEqual([]);
    },
  );
});

test.each(labelSheets)('the labels of $id lie on their paper, beside each other', (sheet) => {
  const last = cellAt(sheet, sheet.columns * sheet.rows - 1);
  const paper = paperSizes[sheet.paper];
  expect(last.leftMm + sheet.widthMm + sheet.leftMm).toBeCloseTo(paper.widthMm, 0);
  expect(last.topMm + sheet.heightMm).toBeLessThanOrEqual(paper.heightMm);
});

const aLabel = (over: Partial<CableLabel> = {}): CableLabel => ({
  id: 'C07',
  line: 'feed:radar',
  spot: { at: 'end', end: 'radar.power', far: 'panel.1' },
  side: 'first end',
  where: '',
  far: ['to the main panel on the door of the locker', 'to main panel', 'to panel'],
  fuse: 'fuse 10 A',
  outsideMm: 8,
  wrapMm: 31.13,
  code: `${boatAddress}/cable/C07`,
  isGiven: true,
  ...over,
});
const roomOf = (widthMm: number, heightMm: number) => ({ widthMm, heightMm, marginXMm: 1.5, marginYMm: 1.5 });
const said = (label: CableLabel, widthMm: number, heightMm: number): string[] =>
  textsOf(setLabel(label, roomOf(widthMm, heightMm)).shapes).map(({ text }) => text);

test('a text is shortened by its own wordings and never cut; the fuse stays, the code goes', () => {
  expect(said(aLabel(), 100, 18)).toEqual(['C07', 'to the main panel on the door of the locker', 'fuse 10 A']);
  expect(said(aLabel(), 22, 12)).toEqual(['C07', 'to main panel', 'fuse 10 A']);
  expect(said(aLabel(), 16, 12)).toEqual(['C07', 'to panel', 'fuse 10 A']);
  expect(setLabel(aLabel(), roomOf(16, 12)).hasCode).toBe(false);
  expect(said(aLabel({ far: ['to a-very-long-name-without-a-gap'] }), 16, 6.5)).toEqual(['C07', 'fuse 10 A']);
});

test('a text goes on in a second line where there is one to spare, so that it stays fuller', () => {
  expect(said(aLabel({ far: ['to the main panel on the door', 'to panel'] }), 45, 18)).toEqual([
    'C07',
    'to the main panel on',
    'the door',
    'fuse 10 A',
  ]);
});

test('a figure stays on one line with its unit', () => {
  const lines = said(aLabel({ far: ['to screen 12 in', 'to it'], code: 'C07' }), 16, 18);
  expect(lines).toEqual(['C07', 'to screen', '12 in', 'fuse 10 A']);
});

test('the half of a parted cable stands first under the id', () => {
  expect(said(aLabel({ half: 'mast side' }), 100, 18)[1]).toBe('mast side');
  expect(said(aLabel({ half: 'mast side' }), 100, 6.5)[1]).toMatch(/^mast side, fuse 10 A/);
});

test('letters are as high as they must be to be read at 300 mm (practice-labels)', () => {
  const [id, ...under] = textsOf(setLabel(aLabel(), roomOf(100, 6.5)).shapes);
  expect((id?.sizeMm ?? 0) * 0.75).toBeCloseTo(labelFigures.typeLeast.value, 9);
  expect((textsOf(setLabel(aLabel(), roomOf(100, 30)).shapes)[0]?.sizeMm ?? 0) * 0.75).toBeCloseTo(4, 9);
  for (const { sizeMm } of under) expect(sizeMm * 0.66).toBeCloseTo(labelFigures.smallType.value, 9);
});

test('what does not fit is told, with the next that does', () => {
  const labels = [aLabel({ half: 'mast side', far: ['to x'], dateIso })];
  const [tape] = labelTapes;
  if (tape === undefined) throw new Error('no tape');
  expect(labelFaults(labelPages(labels, tape, { boat: 'Tern' }), tape)).toContainEqual(
    expect.stringContaining('without a code'),
  );
  const thick = [aLabel({ outsideMm: 16, wrapMm: 56.27 })];
  const [, small] = labelSheets;
  expect(labelFaults(labelPages(thick, small, { boat: 'Tern' }), small)).toContainEqual(
    expect.stringMatching(/^Does not go round C07, up to 57 mm/),
  );
  expect(labelFaults(labelPages([aLabel({ isGiven: false })], small, { boat: 'Tern' }), small)[0]).toMatch(
    /^Not handed out/,
  );
});

test('printing starts at the label that is left, and prints each as often as told', () => {
  const [, sheet] = labelSheets;
  const { pages } = labelPages([aLabel()], sheet, { boat: 'Tern', startAt: 65, copies: 2 });
  expect(pages.map(({ insets }) => insets.length)).toEqual([1, 1]);
});

test('equal boats give equal pages', () => {
  const { boat, plan: own } = planned(anExample('gannet'));
  const make = () => labelPages(cableLabels(boat, own), labelSheets[0], { boat: boat.name });
  expect(JSON.stringify(make())).toBe(JSON.stringify(make()));
});
