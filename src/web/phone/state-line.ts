import { el } from './dom/el.ts';
import { clockSkewMs } from './link/clock-skew.ts';
import { momentWords } from './screens/signed-line.ts';
import type { PhoneState } from './store/phone-state.ts';
import { words } from './words.ts';

const { state: says } = words;

/** Less than this is no matter to anybody. */
const skewToldMs = 180_000;

/** That this phone’s clock is wrong, or the laptop’s; nothing where they agree. */
export const clockWords = (skewMs: number | undefined): string => {
  if (skewMs === undefined || Math.abs(skewMs) < skewToldMs) return '';
  const minutes = Math.round(Math.abs(skewMs) / 60_000);
  const by = minutes < 120 ? says.minutes(minutes) : says.hours(Math.round(minutes / 60));
  return `${says.clock(by, skewMs > 0)}.`;
};

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

/** So long nobody answers before it is asked whether the laptop has another address. */
const movedAfterMs = 120_000;

const mayHaveMoved = ({ standing, waiting, heardAtMs }: PhoneState): boolean =>
  standing === 'unheard' && waiting.size > 0 && (heardAtMs === undefined || Date.now() - heardAtMs > movedAfterMs);

/** The line that always says how this phone stands with the laptop, and what to press where it wants something. */
export const stateLine = (act: {
  readonly pairAgain: () => void;
  readonly carryAway: () => void;
  readonly dropAside: (id: string) => void;
}) => {
  const line = el('p', { role: 'status' });
  const pairAgain = el('button', { type: 'button', class: 'main', on: { click: act.pairAgain } }, says.pairAgain);
  const carry = el('button', { type: 'button', on: { click: act.carryAway } }, words.carry.offer);
  let aside: string | undefined;
  const clock = el('p', {});
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
    element: el('div', { class: 'state' }, line, clock, pairAgain, carry, asideView),
    update(state: PhoneState): void {
      const told = stateWords(state);
      if (line.textContent !== told) line.textContent = told;
      clock.textContent = clockWords(clockSkewMs());
      clock.hidden = clock.textContent === '';
      line.classList.toggle('waits', state.waiting.size > 0 || state.standing === 'unpaired');
      pairAgain.hidden = state.standing !== 'unpaired';
      carry.hidden = !mayHaveMoved(state);
      const [first] = state.aside;
      aside = first?.entry.id;
      asideView.hidden = first === undefined;
      asideSays.textContent = first === undefined ? '' : says.aside(first.says);
    },
  };
};
