/** Every picture that the text of a boat file names, by its hash, whatever it is a picture of. */
export const picturesIn = (boatText: string): readonly string[] => [
  ...new Set([...boatText.matchAll(/"hash"\s*:\s*"([0-9a-f]{64})"/g)].flatMap(([, hash]) => hash ?? [])),
];
