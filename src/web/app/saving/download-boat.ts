/** Gives a boat file to the browser to be put where the person keeps such things. */
export const downloadBoat = ({ name, text }: { name: string; text: string }): void => {
  const plain = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = `${plain === '' ? 'boat' : plain}.boat.json`;
  link.click();
  // the browser has taken the file by the time the next task runs
  setTimeout(() => URL.revokeObjectURL(address), 0);
};
