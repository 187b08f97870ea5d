/** Names that some systems keep for devices, whatever ending follows. */
const kept = /^(con|prn|aux|nul|com\d|lpt\d)$/;

/**
 * The id for a new boat file, made from the boat's name: small letters, digits and hyphens, at most 40 of them, and a
 * number behind it where the id is taken.
 *
 * @example boatFileName('Gannet, a copy', new Set(['gannet-a-copy'])) // 'gannet-a-copy-2'
 */
export const boatFileName = (boatName: string, taken: ReadonlySet<string>): string => {
  const plain = boatName
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 40)
    .replace(/^-|-$/g, '');
  const name = plain === '' || kept.test(plain) ? `boat-${plain}`.replace(/-$/, '') : plain;
  const isTaken = (id: string): boolean => [...taken].some((one) => one.toLowerCase() === id);
  let counter = 1;
  while (isTaken(counter === 1 ? name : `${name}-${counter}`)) counter += 1;
  return counter === 1 ? name : `${name}-${counter}`;
};
