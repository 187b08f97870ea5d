import type { TypedIn } from '../../../../../core/boat/measures.ts';
import type { Plan } from '../../../../../core/plan-shape.ts';

type What = Plan['typed'][number]['what'];

/** Of what is typed, that which can be read off a unit as a figure; names, numbers and units of screens are not. */
export const typedWhat = (what: What): TypedIn['what'] | undefined =>
  what === 'ais-name' || what === 'ais-call-sign' || what === 'ship-number' || what === 'screen-units'
    ? undefined
    : what;
