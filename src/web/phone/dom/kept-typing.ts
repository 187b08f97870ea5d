/** What is typed and not yet written down, by field: it outlives a row that is drawn anew. */
const typed = new Map<string, string>();

/** Gives a field what was typed in it before, and keeps what is typed from now on. */
export const keepTyping = <Field extends HTMLInputElement | HTMLTextAreaElement>(name: string, field: Field): Field => {
  field.value = typed.get(name) ?? field.value;
  field.setAttribute('data-part', name);
  field.addEventListener('input', () => typed.set(name, field.value));
  return field;
};

/** Written down: the field is empty again. */
export const forgetTyping = (name: string, field: HTMLInputElement | HTMLTextAreaElement): void => {
  typed.delete(name);
  field.value = '';
};
