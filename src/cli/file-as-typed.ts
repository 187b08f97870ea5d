/** The name of a boat file as it is typed again: in quotes where a shell would take it apart; of a boat that was piped in, FILE. */
export const fileAsTyped = (file: string): string => {
  if (file === '-') return 'FILE';
  return /^[\w./\\:~+@%-]+$/.test(file) ? file : `"${file}"`;
};
