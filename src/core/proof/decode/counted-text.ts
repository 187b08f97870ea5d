/** A text on the bus that begins with its own length, and where it ends. */
export interface CountedText {
  /** absent where it is empty */
  readonly text?: string;
  readonly end: number;
}

const headBytes = 2;
const plainText = 1;
const wideText = 0;

const wide = (bytes: Uint8Array): string => {
  let text = '';
  for (let at = 0; at + 1 < bytes.length; at += 2)
    text += String.fromCharCode((bytes[at] ?? 0) | ((bytes[at + 1] ?? 0) << 8));
  return text;
};

const plain = (bytes: Uint8Array): string => Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');

const isControl = (code: number): boolean => code < 0x20 || code === 0x7f;

/** What stands before the first FF or 00, without control characters and the blanks around. */
const cleaned = (text: string): string => {
  const end = [...text].findIndex((char) => char === '\0' || char === '\xff' || char === '\uffff');
  return [...(end < 0 ? text : [...text].slice(0, end).join(''))]
    .map((char) => (isControl(char.codePointAt(0) ?? 0) ? ' ' : char))
    .join('')
    .trim();
};

/**
 * Reads a text that begins with its length, these two bytes counted, and with 1 for one byte a character or 0 for two
 * (source: pgn-database). Undefined where the message ends before it does.
 */
export const readCountedText = (payload: Uint8Array, from: number): CountedText | undefined => {
  const length = payload[from];
  const coding = payload[from + 1];
  if (length === undefined || coding === undefined || length < headBytes || from + length > payload.length)
    return undefined;
  if (coding !== plainText && coding !== wideText) return undefined;
  const bytes = payload.subarray(from + headBytes, from + length);
  const text = cleaned(coding === plainText ? plain(bytes) : wide(bytes));
  return { ...(text === '' ? {} : { text }), end: from + length };
};
