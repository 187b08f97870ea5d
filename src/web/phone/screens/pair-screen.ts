import { el } from '../dom/el.ts';
import { words } from '../words.ts';

const { pair: says } = words;

/** Where the code of the laptop is typed, or comes by the picture that the phone has read. */
export const pairScreen = ({
  code,
  name,
  isAgain,
  pair,
  back,
}: {
  readonly code: string;
  readonly name: string;
  readonly isAgain: boolean;
  /** gives why it could not be, in a sentence; nothing where it went well */
  readonly pair: (wish: { code: string; name: string }) => Promise<string | undefined>;
  readonly back?: () => void;
}): HTMLElement => {
  const codeField = el('input', {
    inputmode: 'numeric',
    autocomplete: 'off',
    maxlength: '7',
    value: code,
    enterkeyhint: 'next',
  });
  const nameField = el('input', { autocomplete: 'off', maxlength: '40', value: name, placeholder: says.nameHint });
  const wrong = el('p', { class: 'wrong', role: 'alert' });
  const put = async (event: Event): Promise<void> => {
    event.preventDefault();
    const wish = { code: codeField.value.replace(/\s/g, ''), name: nameField.value.trim() };
    if (!/^\d{6}$/.test(wish.code)) wrong.textContent = says.wrongCode;
    else if (wish.name === '') wrong.textContent = says.wrongName;
    else wrong.textContent = (await pair(wish)) ?? '';
  };
  return el(
    'section',
    {},
    el('h2', {}, says.heading),
    el('p', {}, says.about),
    isAgain ? el('p', {}, says.again) : undefined,
    el(
      'form',
      { class: 'stacked', on: { submit: (event) => void put(event) } },
      el('label', {}, el('span', {}, says.code), codeField),
      el('label', {}, el('span', {}, says.name), nameField),
      wrong,
      el('button', { class: 'main' }, says.do),
    ),
    back === undefined ? undefined : el('button', { type: 'button', on: { click: back } }, says.back),
  );
};
