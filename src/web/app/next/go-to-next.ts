/** What a person begins with, for each thing that may be next: taken to and given the keyboard. Absent where the step itself says it first. */
const begunAt: Readonly<Record<string, string>> = {
  kit: '.kit-search input',
  wiring: '.kit-wire button',
  needs: '#needs-asked',
  danger: '.note.danger button',
  fault: '.note.fault button',
  doubts: '.note.doubt button',
  missing: '.note .cure-link',
  unfed: '#power-feeds',
  tape: '#boat-tape',
  order: '#buy-order',
  start: '.work-start input',
  jobs: '#work-jobs',
  tests: '#prove-tests',
};

/** Long enough for a step that is brought for the first time. */
const patienceMs = 3000;

const begin = (selector: string): boolean => {
  const found = document.querySelector<HTMLElement>(`.margin ${selector}`);
  if (found === null) return false;
  found.scrollIntoView({ block: 'center', behavior: 'instant' });
  found.focus({ preventScroll: true });
  return true;
};

/** Takes the page to where the next thing is begun, as soon as it is there; `isHere`: the step is the one that is open. */
export const goToNext = (id: string, isHere: boolean): void => {
  const selector = begunAt[id];
  if (selector === undefined) return;
  const until = performance.now() + patienceMs;
  const look = (): void => {
    if (!begin(selector) && performance.now() < until) setTimeout(look, 100);
  };
  // a step that is gone to first takes the place of the one that is there
  setTimeout(look, isHere ? 0 : 100);
};
