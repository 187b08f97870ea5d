import './theme/fonts.css';
import 'virtual:themes.css';
import './theme/page.css';
import './app/boat-page.css';
import './app/course/course.css';
import './app/sheet/sheet.css';
import './app/margin/margin.css';
import './app/cards/cards.css';
import './app/words/words.css';
import './drawing/drawing.css';
import './theme/print.css';
import './theme/night.css';
import './theme/forced-colours.css';
import { createRoot } from 'react-dom/client';
import { App } from './app/app.tsx';
import { boatSaver } from './app/saving/boat-saver.ts';
import { store } from './app/store/the-store.ts';
import { tintFrame } from './app/theme.ts';
import { firstPictureSeen } from './drawing/first-picture.ts';
import { planClient } from './workers/plan-client.ts';
import { workerPort } from './workers/worker-port.ts';

const root = document.getElementById('app');
if (root === null) throw new Error('The page has no place for the app.');

/** Long enough for a hand to make the next change, short enough to lose nothing; a save that failed waits longer and longer. */
const restMs = 600;
const longestMs = 30_000;
const later = (run: () => void, triesFailed: number): (() => void) => {
  const waitMs = triesFailed === 0 ? restMs : Math.min(longestMs, 1000 * 2 ** triesFailed);
  const timer = setTimeout(run, waitMs);
  return () => clearTimeout(timer);
};

const client = planClient(workerPort());
const saver = boatSaver({
  put: store.save,
  later,
  onSaved: ({ opened, ...saved }) => client.saved(opened, saved),
});

tintFrame();
createRoot(root).render(<App client={client} saver={saver} />);

// once the first picture is seen, for it brings the whole app; with a server the page comes from this machine anyway
if (store.kind === 'browser') {
  void firstPictureSeen.then(() =>
    setTimeout(() => void import('./app/kept-here/kept-page.ts').then(({ keepPage }) => keepPage()), restMs),
  );
}
