import { describe, expect, it } from 'vitest';
import { pgnInfo } from '../facts/pgns.ts';
import type { BusMessage } from './bus-messages.ts';
import { busWaits } from './bus-waits.ts';
import reference from './reference-boat.check.json' with { type: 'json' };

const messageOf = ({ pgn, frames, everyMs }: { pgn: number; frames: number; everyMs: number }): BusMessage => ({
  pgn,
  frames,
  everyMs,
  count: 1,
  dataBytes: 8,
  priority: pgnInfo(pgn)?.priority ?? 6,
});
const boat = reference.messages.map(messageOf);

/** The boat up to a message: of those left that one waits longest, as nothing slower stands below it. */
const upTo = (pgn: number): readonly BusMessage[] => boat.slice(0, boat.findIndex((one) => one.pgn === pgn) + 1);

describe('longest waits on the reference boat', () => {
  it.each([
    [127237, 3.2],
    [127250, 4.48],
    [129029, 17.92],
    [129540, 47.36],
  ])('MS-50: PGN %i waits %f ms where all frames are queued at once (Davis et al. 2007, extended)', (pgn, ms) => {
    expect(busWaits(upTo(pgn)).anyMs).toBeCloseTo(ms, 6);
  });

  it.each([
    [127237, 5.12],
    [129029, 21.76],
    [129540, 60.8],
  ])('MS-52: PGN %i waits %f ms where frames are fed one by one', (pgn, ms) => {
    expect(busWaits(upTo(pgn)).anyFedSinglyMs).toBeCloseTo(ms, 6);
  });

  it('is 5.12 ms for what a pilot steers by: the rate of turn comes after heading and rudder', () => {
    expect(busWaits(boat).steeringMs).toBeCloseTo(5.12, 6);
  });

  it('is the same in whatever order the messages are told', () => {
    expect(busWaits(boat.toReversed())).toEqual(busWaits(boat));
  });
});

describe('longest waits on a bus', () => {
  const heading = messageOf({ pgn: 127250, frames: 1, everyMs: 100 });

  it('counts two senders of one message against each other, and each of several tanks', () => {
    expect(busWaits([heading]).steeringMs).toBeCloseTo(1.28, 6);
    expect(busWaits([heading, heading]).steeringMs).toBeCloseTo(1.92, 6);
    expect(busWaits([{ ...heading, count: 3 }]).steeringMs).toBeCloseTo(2.56, 6);
  });

  it('says nothing of steering where nothing of it is sent', () => {
    expect(busWaits([messageOf({ pgn: 128267, frames: 1, everyMs: 1000 })])).not.toHaveProperty('steeringMs');
  });

  it('leaves steering its bound where what is less urgent has none', () => {
    const flood = { ...messageOf({ pgn: 128267, frames: 1, everyMs: 100 }), count: 160 };
    expect(busWaits([heading, flood])).toEqual({ steeringMs: 1.28 });
  });
});
