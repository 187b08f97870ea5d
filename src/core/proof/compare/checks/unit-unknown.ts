import type { Check } from '../check.ts';
import { listed, unitName } from '../say.ts';

/** A sender that no planned unit stands for. */
export const unitUnknown: Check = {
  id: 'unit-unknown',
  title: 'Somebody sends who is not in the plan.',
  level: 'doubt',
  sources: ['choice-proof'],
  find: ({ planned, strangers }) =>
    strangers.map(({ on, address, what, sends, couldBe, identity }) => ({
      about: [on, ...couldBe],
      apart: address ?? identity ?? what,
      says: `${what}${address === undefined ? '' : ` at address ${address}`} is not in the plan. It sends: ${sends}.${
        couldBe.length === 0
          ? ''
          : ` It could be ${listed(
              couldBe.map((id) => unitName(planned, id)),
              'or',
            )}, had that not been found already.`
      }`,
      device: what,
      cure: 'Find it aboard. Put it into the boat file, or take it off the bus.',
    })),
};
