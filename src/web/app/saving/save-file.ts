/** The kinds of file that the page hands out. */
const types = {
  csv: 'text/csv',
  dxf: 'image/vnd.dxf',
  html: 'text/html',
  json: 'application/json',
  pdf: 'application/pdf',
  svg: 'image/svg+xml',
  zip: 'application/zip',
  xlsx: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
} as const;

/** Letters and digits of a name joined by hyphens, for the name of a file; empty where it has none. */
export const plainName = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');

/** Gives the text of a boat file to the browser, under the boat’s name. */
export const saveBoatFile = (boatName: string, text: string): void =>
  saveFile({ name: `${plainName(boatName) || 'boat'}.boat.json`, text, type: 'json' });

/** Gives a file to the browser to be put where the person keeps such things. */
export const saveFile = ({ name, text, type }: { name: string; text: BlobPart; type: keyof typeof types }): void => {
  const address = URL.createObjectURL(new Blob([text], { type: types[type] }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // the browser has taken the file by the time the next task runs
  setTimeout(() => URL.revokeObjectURL(address), 0);
};
