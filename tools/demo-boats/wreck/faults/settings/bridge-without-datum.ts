import type { Fault } from '../../fault.ts';

/** A bridge of 17 m, and nobody wrote down over what. */
export const settingsBridgeWithoutDatum: Fault = {
  rule: 'settings/bridge-without-datum',
  about: [],
  plant: (boat) => ({
    ...boat,
    sea: {
      ...boat.sea,
      bridges: [{ id: 'road-bridge', on: '2027-06-01', name: 'road bridge', chartedM: 17 }],
    },
  }),
};
