/** Every picture that the text of a boat file names, by its hash, whatever it is a picture of. */
export const picturesIn = (boatText: string): readonly string[] => [
  ...new Set([...boatText.matchAll(/"hash"\s*:\s*"([0-9a-f]{64})"/g)].flatMap(([, hash]) => hash ?? [])),
];

/** Puts the pictures of one boat beside its copy in the folder; one that is missing stays so, and is a doubt there too. */
export const copyPictures = async (boatText: string, from: string, to: string): Promise<void> => {
  for (const hash of picturesIn(boatText)) {
    const found = await fetch(`${from}/files/${hash}`);
    if (!found.ok) continue;
    const picture = await found.blob();
    await fetch(`${to}/files/${hash}`, { method: 'PUT', body: picture, headers: { 'content-type': picture.type } });
  }
};
