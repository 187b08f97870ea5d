/** Characters that XML 1.0 does not allow at all, and halves of a surrogate pair. */
const isForbidden = (character: string): boolean => {
  const code = character.codePointAt(0) ?? 0;
  const isControl = code < 0x20 && code !== 0x09 && code !== 0x0a && code !== 0x0d;
  return isControl || (code >= 0xd800 && code <= 0xdfff) || code === 0xfffe || code === 0xffff;
};

/** A text without the characters that XML forbids. */
export const allowedInXml = (text: string): string => [...text].filter((character) => !isForbidden(character)).join('');

/** A text as it may stand in XML, in an attribute or between tags: what XML forbids is left out. */
export const xmlText = (text: string): string =>
  allowedInXml(text).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
