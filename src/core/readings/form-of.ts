import type { Form } from '../plan-shape.ts';
import type { Signal } from './signal.ts';

/** How a signal is written, for the plan: a flag that was lost on the way is left out. */
export const formOf = ({ message, instance, everyMs, reference }: Signal): Form => ({
  ...(typeof message === 'number' ? { pgn: message } : {}),
  ...(typeof message === 'string' ? { sentence: message } : {}),
  ...(instance === undefined ? {} : { instance }),
  ...(everyMs === undefined ? {} : { everyMs }),
  ...(reference === undefined || reference === 'lost' ? {} : { reference }),
});
