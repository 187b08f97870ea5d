const noText = 0xff;

/**
 * A text of fixed room on the bus: ends at the first FF or 00; spaces and @ around it are padding, and characters that
 * are none become spaces. Undefined where nothing is left.
 */
export const paddedText = (bytes: Uint8Array): string | undefined => {
  const end = bytes.findIndex((byte) => byte === noText || byte === 0);
  const text = Array.from(end < 0 ? bytes : bytes.subarray(0, end), (byte) =>
    byte < 0x20 || byte === 0x7f ? ' ' : String.fromCharCode(byte),
  )
    .join('')
    .replace(/^[ @]+/, '')
    .replace(/[ @]+$/, '');
  return text === '' ? undefined : text;
};
