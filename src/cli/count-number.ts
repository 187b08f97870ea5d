import { InvalidArgumentError } from 'commander';

const most = 1000;

/**
 * A count typed behind an option.
 *
 * @throws InvalidArgumentError where it is none
 */
export const countNumber = (text: string): number => {
  const count = Number(text);
  if (!Number.isInteger(count) || count < 1 || count > most)
    throw new InvalidArgumentError(`That is a whole number from 1 to ${most}.`);
  return count;
};
