import { el } from '../dom/el.ts';
import { type Carried, carriedText } from '../store/carried-entries.ts';
import { words } from '../words.ts';

const { carry: says } = words;

/** The address as it was typed, with the port of this page where none was typed; undefined where it is none. */
export const addressOf = (typed: string, ownPort: string): string | undefined => {
  const [, host, port = ownPort] = /^(?:http:\/\/)?([a-z0-9.-]+)(?::(\d{1,5}))?\/?$/i.exec(typed.trim()) ?? [];
  if (host === undefined) return undefined;
  return `http://${host}${port === '' ? '' : `:${port}`}/`;
};

/** Where the laptop’s new address is typed, to open its page with what waits here. */
export const carryAwayScreen = (carried: Carried, back: () => void): HTMLElement => {
  const field = el('input', { autocomplete: 'off', autocapitalize: 'off', inputmode: 'url', placeholder: says.hint });
  const wrong = el('p', { class: 'wrong', role: 'alert' });
  const put = (event: Event): void => {
    event.preventDefault();
    const address = addressOf(field.value, window.location.port);
    wrong.textContent = address === undefined ? says.noAddress : '';
    // beside this page, which keeps what it has in any case
    if (address !== undefined) window.open(`${address}#carry=${carriedText(carried)}`, '_blank', 'noopener');
  };
  return el(
    'section',
    {},
    el('h2', {}, says.heading),
    el('p', {}, says.about(carried.entries.length)),
    el(
      'form',
      { class: 'stacked', on: { submit: put } },
      el('label', {}, el('span', {}, says.address), field),
      wrong,
      el('button', { class: 'main' }, says.open),
    ),
    el('button', { type: 'button', on: { click: back } }, words.pair.back),
  );
};

/** What came along with an address: it is kept only when the person says so, for anybody can write an address. */
export const carriedScreen = (
  { boat, entries }: Carried,
  act: { readonly keep: () => void; readonly leave: () => void },
): HTMLElement =>
  el(
    'section',
    {},
    el('h2', {}, says.arrived(entries.length, boat.name)),
    el('p', {}, says.trust),
    el('button', { type: 'button', class: 'main', on: { click: act.keep } }, says.keep),
    el('button', { type: 'button', on: { click: act.leave } }, says.leave),
  );
