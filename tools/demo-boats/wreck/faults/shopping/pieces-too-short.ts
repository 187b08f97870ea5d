import type { Fault } from '../../fault.ts';

/** Half a metre of drop is bought for a tank sender that wants more. */
export const shoppingPiecesTooShort: Fault = {
  rule: 'shopping/pieces-too-short',
  about: ['drop:fuel-port.bus~nav'],
  plant: (boat) => ({
    ...boat,
    pins: {
      ...boat.pins,
      pieces: { ...boat.pins?.pieces, 'drop:fuel-port.bus~nav': { pieces: [{ mm: 500 }], state: 'bought' } },
    },
  }),
};
