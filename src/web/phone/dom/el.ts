type Child = Node | string | undefined;

/** What an element is given besides its children: attributes as they are written, and what is called. */
interface Given {
  readonly class?: string;
  readonly on?: Readonly<Record<string, (event: Event) => void>>;
  readonly [attribute: string]: string | boolean | undefined | Readonly<Record<string, (event: Event) => void>>;
}

/**
 * Makes an element. Text is only ever put in as text.
 *
 * @example el('button', { class: 'big', type: 'button', on: { click: tick } }, words.done)
 */
export const el = <Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  { on = {}, ...attributes }: Given = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] => {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === 'string') made.setAttribute(name, value);
    else if (value === true) made.setAttribute(name, '');
  }
  for (const [event, hear] of Object.entries(on)) made.addEventListener(event, hear);
  made.append(...children.filter((child) => child !== undefined));
  return made;
};
