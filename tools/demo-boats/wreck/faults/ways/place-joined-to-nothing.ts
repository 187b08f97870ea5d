import type { Fault } from '../../fault.ts';

/** Nobody has drawn how a cable gets to the compass, so its lamp cannot be fed. */
export const waysPlaceJoinedToNothing: Fault = {
  rule: 'ways/place-joined-to-nothing',
  about: ['binnacle'],
  plant: (boat) => ({ ...boat, ways: boat.ways.filter((way) => way.id !== 'w13') }),
};
