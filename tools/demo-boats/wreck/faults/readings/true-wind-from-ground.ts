import { taped } from '../../base.ts';
import { withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';
import { asRead, withSecondSheet } from './own-sheets.ts';

/** A vane and a position antenna in one, a wind plotter, and no log. */
export const readingsTrueWindFromGround: Fault = {
  rule: 'readings/true-wind-from-ground',
  about: ['wind-screen', 'wind-screen.n2k'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'wind-bus',
      name: 'Wind bus',
      sheet: asRead('vane-sheet', 'Weather station, as its manual has it', {
        sends: [{ pgn: 130306 }, { pgn: 129026 }],
      }),
      kit: [
        { id: 'vane', name: 'weather station', place: 'aft-cabin', tail: taped(0.3) },
        { id: 'wind-screen', name: 'wind plotter', place: 'aft-cabin', tail: taped(0.3) },
      ],
      walk: [{ place: 'aft-cabin', tees: ['vane.n2k', 'wind-screen.n2k', 'feed'] }],
    });
    return withSecondSheet(
      { ...boat, needs: [...boat.needs, { reading: 'wind-true', at: 'wind-screen', must: false }] },
      'wind-screen',
      asRead('wind-screen-sheet', 'Wind screen, as its manual has it', {
        sends: [{ reading: 'wind-true' }],
        hears: [{ pgn: 130306 }, { pgn: 129026 }],
      }),
    );
  },
};
