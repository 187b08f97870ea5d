import { boatPage } from './boat-page.ts';
import { el } from './dom/el.ts';
import { browserShelf } from './kept/browser-shelf.ts';
import { type BoatOnLaptop, boatsIn, boatsOnLaptop, pair, pairedOn } from './link/pairing.ts';
import { boatsScreen } from './screens/boats-screen.ts';
import { carriedScreen, carryAwayScreen } from './screens/carry-screens.ts';
import { pairScreen } from './screens/pair-screen.ts';
import { type Carried, carriedIn } from './store/carried-entries.ts';
import { boatsKey, nameKey, openKey } from './store/shelf.ts';
import { waitingEntries } from './store/waiting-entries.ts';
import { words } from './words.ts';

const askAgainMs = 4000;

const keptBoats = (key: string): readonly BoatOnLaptop[] => {
  try {
    return boatsIn(JSON.parse(browserShelf.get(key) ?? '[]'));
  } catch {
    return [];
  }
};

/** What waited under another address of the laptop, where the address of this page carries it; taken out of it like a code. */
const carriedInAddress = (): Carried | undefined => {
  const text = /^#carry=(.+)$/.exec(window.location.hash)?.[1];
  if (text === undefined) return undefined;
  window.history.replaceState(null, '', window.location.pathname);
  return carriedIn(text);
};

/** The code in the address that the laptop’s picture leads to; it is taken out of it, so that it is not kept with the page. */
const codeInAddress = (): string => {
  const code = /^#pair=(\d{6})$/.exec(window.location.hash)?.[1] ?? '';
  if (code !== '') window.history.replaceState(null, '', window.location.pathname);
  return code;
};

const lightsButton = (): HTMLButtonElement => {
  const button = el('button', { type: 'button' });
  const { dataset } = document.documentElement;
  const say = (): void => {
    button.textContent = dataset.theme === 'night' ? words.lights.night : words.lights.day;
  };
  button.onclick = () => {
    dataset.theme = dataset.theme === 'night' ? 'day' : 'night';
    browserShelf.set('fairlead-theme', dataset.theme);
    say();
  };
  say();
  return button;
};

/** Starts the phone’s page: pairs it, lets a boat be chosen, and shows her. */
export const startPhone = (root: HTMLElement): void => {
  let end = (): void => undefined;

  const head = (title: string, back?: () => void): HTMLElement =>
    el(
      'header',
      {},
      back === undefined ? undefined : el('button', { type: 'button', on: { click: back } }, words.boats),
      el('h1', {}, title),
      lightsButton(),
    );

  const begin = (...content: HTMLElement[]): void => {
    end();
    end = () => undefined;
    root.replaceChildren(...content);
  };

  const openBoat = (boat: BoatOnLaptop): void => {
    end();
    browserShelf.set(openKey, JSON.stringify([boat]));
    end = boatPage(root, boat, {
      pairAgain: () => showPair('', boat),
      carryAway: (carried) =>
        begin(
          head(words.carry.heading),
          el(
            'main',
            {},
            carryAwayScreen(carried, () => openBoat(boat)),
          ),
        ),
      head: head(boat.name, () => void showBoats(true)),
    });
  };

  const showPair = (code: string, boat?: BoatOnLaptop): void => {
    const wishes = {
      code,
      name: browserShelf.get(nameKey) ?? '',
      isAgain: boat !== undefined,
      pair: async (wish: { code: string; name: string }): Promise<string | undefined> => {
        browserShelf.set(nameKey, wish.name);
        const told = await pair(browserShelf, wish);
        if (told === 'full') return words.pair.full;
        if (told.kind === 'unheard') return told.says ?? words.pair.unheard;
        if (told.kind === 'unpaired') return words.pair.unheard;
        if (told.kind === 'refused') return told.says;
        if (boat === undefined) void showBoats(false);
        else openBoat(boat);
        return undefined;
      },
    };
    const back = boat === undefined ? {} : { back: () => openBoat(boat) };
    begin(head(words.title), el('main', {}, pairScreen({ ...wishes, ...back })));
  };

  const showBoats = async (isWished: boolean): Promise<void> => {
    const paired = pairedOn(browserShelf);
    if (paired === undefined) return showPair('');
    const main = el('main', {});
    begin(head(words.title), main);
    let isOver = false;
    end = () => {
      isOver = true;
    };
    const draw = (boats: readonly BoatOnLaptop[], isHeard: boolean): void =>
      main.replaceChildren(boatsScreen(boats, { isHeard, open: openBoat }));
    draw(keptBoats(boatsKey), true);
    for (;;) {
      const heard = await boatsOnLaptop(paired.token);
      if (isOver) return;
      if (heard.kind === 'unpaired') return showPair('');
      if (heard.kind === 'heard') {
        browserShelf.set(boatsKey, JSON.stringify(heard.value));
        const [only, ...others] = heard.value;
        if (only !== undefined && others.length === 0 && !isWished) return openBoat(only);
        return draw(heard.value, true);
      }
      draw(keptBoats(boatsKey), false);
      await new Promise((resolve) => {
        setTimeout(resolve, askAgainMs);
      });
      if (isOver) return;
    }
  };

  const showCarried = (carried: Carried): void => {
    const { boat, entries } = carried;
    const go = (): void => (pairedOn(browserShelf) === undefined ? showPair('', boat) : openBoat(boat));
    const keep = (): void => {
      const waiting = waitingEntries(browserShelf, boat.id);
      // what has no room stays at the other address as well
      for (const entry of entries) waiting.put(entry);
      go();
    };
    begin(head(words.title), el('main', {}, carriedScreen(carried, { keep, leave: () => void showBoats(false) })));
  };

  const code = codeInAddress();
  const carried = carriedInAddress();
  const [open] = keptBoats(openKey);
  if (carried !== undefined) showCarried(carried);
  else if (code !== '') showPair(code, open);
  else if (open === undefined) void showBoats(false);
  else openBoat(open);
};
