import './theme/fonts.css';
import 'virtual:themes.css';
import './theme/page.css';
import './app/boat-page.css';
import './app/cards/cards.css';
import './app/words/words.css';
import './drawing/drawing.css';
import './theme/print.css';
import { createRoot } from 'react-dom/client';
import { App } from './app/app.tsx';
import { putBoat } from './app/opening/fetch-boats.ts';
import { boatSaver } from './app/saving/boat-saver.ts';
import { planClient } from './workers/plan-client.ts';
import { workerPort } from './workers/worker-port.ts';

const root = document.getElementById('app');
if (root === null) throw new Error('The page has no place for the app.');

/** Long enough for a hand to make the next change, short enough to lose nothing. */
const restMs = 600;
const later = (run: () => void): (() => void) => {
  const timer = setTimeout(run, restMs);
  return () => clearTimeout(timer);
};

createRoot(root).render(<App client={planClient(workerPort())} saver={boatSaver({ put: putBoat, later })} />);
