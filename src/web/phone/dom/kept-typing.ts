/** What is typed and not yet written down, by field: it outlives a row that is drawn anew. */
const typed = new Map<string, string>();

/** Gives a field what was typed in it before, and keeps what is typed from now on. */
export const keepTyping = <Field extends HTMLInputElement | HTMLTextAreaElement>(name: string, field: Field): Field => {
  field.value = typed.get(name) ?? field.value;
  field.setAttribute('data-part', name);
  field.addEventListener('input', () => typed.set(name, field.value));
  return field;
};

/**
 * Writes down what is typed in some fields, by their names, and empties them; what could not be written stays in them. They
 * are emptied before, for a row is drawn anew while it is written.
 */
export const writeTyped = (
  fields: Readonly<Record<string, HTMLInputElement | HTMLTextAreaElement>>,
  write: () => boolean,
): void => {
  const before = Object.entries(fields).map(([name, field]) => ({ name, field, text: field.value }));
  for (const { name, field } of before) {
    typed.delete(name);
    field.value = '';
  }
  if (write()) return;
  for (const { name, field, text } of before) {
    typed.set(name, text);
    field.value = text;
  }
};
