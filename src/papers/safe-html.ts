const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** A text as a page shows it letter for letter, whatever a boat file has in it. */
export const safeHtml = (text: string): string => text.replace(/[&<>"]/g, (letter) => entities[letter] ?? letter);
