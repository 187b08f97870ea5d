import type { Fault } from '../../fault.ts';

/** Somebody settled the display’s feed by the way it had before the display moved from the locker to the dash. */
export const waysSettledRoute: Fault = {
  rule: 'ways/settled-route',
  about: ['display', 'switches'],
  plant: (boat) => ({
    ...boat,
    pins: {
      ...boat.pins,
      routes: { ...boat.pins?.routes, 'feed:display.supply~switches': { ways: ['w5'], state: 'fixed' } },
    },
  }),
};
