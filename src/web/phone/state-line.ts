import { el } from './dom/el.ts';
import { momentWords } from './screens/signed-line.ts';
import type { PhoneState } from './store/phone-store.ts';
import { words } from './words.ts';

const { state: says } = words;

/** Whether all is sent, what waits, and when the laptop was heard last, in one line. */
export const stateWords = ({ waiting, standing, heardAtMs, says: refusal }: PhoneState): string => {
  const count = waiting.size;
  if (standing === 'unpaired') return says.unpaired(count);
  const heard = heardAtMs === undefined ? says.neverHeard : says.notHeard(momentWords(heardAtMs));
  if (standing === 'heard') {
    const at = heardAtMs === undefined ? '' : `, ${says.heardAt(momentWords(heardAtMs))}`;
    return `${count === 0 ? says.sent : says.sending(count)}${at}`;
  }
  const waits = count === 0 ? [] : [says.waits(count)];
  if (standing === 'asking') return [...waits, says.asking].join('. ');
  return [...waits, refusal ?? heard].join('. ');
};

/** The line that always says how this phone stands with the laptop, and what to press where it wants something. */
export const stateLine = (act: { readonly pairAgain: () => void; readonly dropAside: (id: string) => void }) => {
  const line = el('p', { role: 'status' });
  const pairAgain = el('button', { type: 'button', class: 'main', on: { click: act.pairAgain } }, says.pairAgain);
  let aside: string | undefined;
  const asideSays = el('p', { class: 'wrong' });
  const drop = (): void => {
    if (aside !== undefined) act.dropAside(aside);
  };
  const asideView = el(
    'div',
    { class: 'aside' },
    asideSays,
    el('button', { type: 'button', on: { click: drop } }, says.understood),
  );
  return {
    element: el('div', { class: 'state' }, line, pairAgain, asideView),
    update(state: PhoneState): void {
      const told = stateWords(state);
      if (line.textContent !== told) line.textContent = told;
      line.classList.toggle('waits', state.waiting.size > 0 || state.standing === 'unpaired');
      pairAgain.hidden = state.standing !== 'unpaired';
      const [first] = state.aside;
      aside = first?.entry.id;
      asideView.hidden = first === undefined;
      asideSays.textContent = first === undefined ? '' : says.aside(first.says);
    },
  };
};
