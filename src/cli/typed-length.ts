import { UserError } from '../core/boat/user-error.ts';
import { parseLength } from '../core/units/parse-length.ts';

/**
 * Metres of a length typed after an option, in either unit; undefined where it was not given.
 *
 * @throws UserError when it is no length
 */
export const typedLength = (text: string | undefined, option: string): number | undefined => {
  if (text === undefined) return undefined;
  const valueM = parseLength(text);
  if (valueM !== undefined) return valueM;
  throw new UserError({
    says: `${option} is given as “${text}”, which is no length.`,
    whatToDo: 'Write it like 11.8 m, or 39 ft, or 38 ft 9 in.',
  });
};
