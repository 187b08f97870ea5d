import { ownSignature } from '../../../forms/own-name.ts';
import { todayIso } from '../../binder/today-iso.ts';

/** The day, the name and the id under which a trial is written down: one of a kind, a unit and a day. */
export const trialOf = (
  kind: string,
  of: string,
): { readonly id: string; readonly on: string; readonly by?: string } => {
  const on = todayIso();
  return { id: `${kind}-${of.slice(0, 36)}-${on}`, on, ...ownSignature() };
};
