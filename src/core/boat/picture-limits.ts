/** What a picture beside a boat file may be. */
export const pictureTypes = ['jpeg', 'png', 'webp'] as const;

/** Most bytes it may have: ten times what one of 2000 pixels usually takes. */
export const largestPictureBytes = 8_000_000;
