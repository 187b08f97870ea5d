import type { Boat } from '../../../../../src/core/boat/boat-schema.ts';
import { taped } from '../../base.ts';
import { withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';
import { asRead, withSecondSheet } from './own-sheets.ts';

/** A bus with a weather mast and a plotter that works true wind out with one kind of speed. */
const withWindBus = (
  before: Boat,
  { where, speedPgn, need }: { where: string; speedPgn: number; need: Pick<Boat['needs'][number], 'reference'> },
): Boat => {
  const [mast, screen] = [`mast-${where}`, `wind-${where}`];
  const boat = withOwnBus(before, {
    id: `winds-${where}`,
    name: `Wind bus ${where}`,
    sheet: asRead(`mast-sheet-${where}`, 'Weather mast, as its manual has it', {
      sends: [{ pgn: 130306 }, { pgn: speedPgn }],
    }),
    kit: [mast, screen].map((id) => ({ id, name: id.replace('-', ' '), place: 'aft-cabin', tail: taped(0.3) })),
    walk: [{ place: 'aft-cabin', tees: [`${mast}.n2k`, `${screen}.n2k`, 'feed'] }],
  });
  return withSecondSheet(
    { ...boat, needs: [...boat.needs, { reading: 'wind-true', at: screen, must: false, ...need }] },
    screen,
    asRead(`wind-sheet-${where}`, 'Wind screen, as its manual has it', {
      sends: [{ reading: 'wind-true' }],
      hears: [{ pgn: 130306 }, { pgn: speedPgn }],
    }),
  );
};

/** The wind plotter forward reckons with the log, the one aft with the position antenna. */
export const readingsTrueWindOfTwoKinds: Fault = {
  rule: 'readings/true-wind-of-two-kinds',
  about: ['wind-fore', 'wind-aft'],
  plant: (boat) =>
    withWindBus(withWindBus(boat, { where: 'fore', speedPgn: 128259, need: { reference: 'water' } }), {
      where: 'aft',
      speedPgn: 129026,
      need: { reference: 'ground' },
    }),
};
