import { describe, expect, test } from 'vitest';
import { type BusHit, busState, busTrunk } from './bus-trunk.ts';

const trunk = busTrunk(
  {
    id: 'nav',
    ends: ['bow', 'stern'],
    walk: [
      { place: 'bow', tees: ['compass.n2k', 'depth.n2k'] },
      { place: 'mast', via: 'w1', tees: ['feed'] },
      { place: 'helm', via: 'w2', tees: ['screen.n2k'] },
      { place: 'stern', via: 'w3', tees: [] },
    ],
  },
  [],
);
const whole: BusHit = { gaps: [], tees: [], off: [], shorted: false };
const left = (hit: Partial<BusHit>) => {
  const { partOf, doubtful } = busState(trunk, { ...whole, ...hit });
  return { ports: [...partOf.keys()].filter((tee) => tee !== 'feed'), doubtful };
};
const every = ['compass.n2k', 'depth.n2k', 'screen.n2k'];

describe('what is left of a bus', () => {
  test('is all of it while nothing is hit', () => {
    expect(left({})).toEqual({ ports: every, doubtful: false });
  });

  test('a lost terminator leaves everything in doubt, both lost leave nothing', () => {
    expect(left({ gaps: [0] })).toEqual({ ports: every, doubtful: true });
    expect(left({ gaps: [4] })).toEqual({ ports: every, doubtful: true });
    expect(left({ gaps: [0, 4] })).toEqual({ ports: [], doubtful: false });
  });

  test('a cut leaves the side that has the feed, in doubt; the other side has no power', () => {
    expect(left({ gaps: [3] })).toEqual({ ports: ['compass.n2k', 'depth.n2k'], doubtful: true });
    expect(left({ gaps: [2] })).toEqual({ ports: ['screen.n2k'], doubtful: true });
    expect(busState(trunk, { ...whole, gaps: [2] }).unfed).toEqual(['compass.n2k', 'depth.n2k']);
  });

  test('a tee that breaks out parts the trunk and takes its unit; a drop that comes off takes its unit alone', () => {
    expect(left({ tees: [1] })).toEqual({ ports: ['screen.n2k'], doubtful: true });
    expect(left({ off: ['depth.n2k'] })).toEqual({ ports: ['compass.n2k', 'screen.n2k'], doubtful: false });
  });

  test('without the tee of the feed, and with a short, there is nothing left', () => {
    expect(left({ tees: [2] })).toEqual({ ports: [], doubtful: false });
    expect(left({ shorted: true })).toEqual({ ports: [], doubtful: false });
  });

  test('where nobody knows the feed, both sides of a cut are in doubt and neither hears the other', () => {
    const unfed = busTrunk(
      {
        id: 'nav',
        ends: ['bow', 'helm'],
        walk: [
          { place: 'bow', tees: ['a.n2k'] },
          { place: 'helm', via: 'w', tees: ['b.n2k'] },
        ],
      },
      [],
    );
    const { partOf, doubtful } = busState(unfed, { ...whole, gaps: [1] });
    expect(doubtful).toBe(true);
    expect(partOf.get('a.n2k')).not.toBe(partOf.get('b.n2k'));
  });
});
