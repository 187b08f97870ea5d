import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { plan } from '../../core/plan.ts';
import { toSvg } from '../drawing/to-svg.ts';
import { binderDrawings } from './binder-drawings.ts';

const drawings = () => {
  const { boat } = aBoat();
  return binderDrawings({
    boat,
    plan: plan(boat, new Map()),
    paper: 'a4',
    standing: 'as planned',
    revision: 'A',
    dateIso: '2027-03-01',
  });
};

/** Sheets of a small boat that were looked at as pictures; `vitest -u` writes them anew, and then they are looked at again. */
test.each(['the boat from above', 'antennas with their leads', 'places P3'])(
  '%s is drawn as it was looked at',
  async (title) => {
    const found = drawings().find((one) => one.title.startsWith(title));
    if (found === undefined) throw new Error(`There is no sheet of ${title}.`);
    await expect(toSvg(found.drawing, 'paper')).toMatchFileSnapshot(`golden/${found.part}.svg`);
  },
);
