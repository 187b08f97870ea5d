/** Places and lengths are kept to the millimetre; nothing aboard is known finer. Never the zero below nothing, which a file cannot keep. */
export const toMillimetre = (valueM: number): number => Math.round(valueM * 1000) / 1000 + 0;
