import type { BoatIndex } from '../../boat/boat-index.ts';
import type { Level } from '../../plan-shape.ts';
import type { RemoteCommand, RemoteEntry } from '../../remote-shape.ts';
import type { Observation, Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';
import { waysInWords } from './way-words.ts';

const levelOf: Readonly<Record<RemoteCommand['known'], Level>> = { said: 'danger', taken: 'fault', perhaps: 'doubt' };

const words: Readonly<Record<RemoteCommand['known'], string>> = {
  said: 'is said to pass on what comes in, and a pilot hears it',
  taken: 'is a converter of which nobody has said that it only listens, and a pilot hears it',
  perhaps: 'sends what a pilot steers by, and many such units can be worked from a phone',
};

const cures: Readonly<Record<RemoteCommand['known'], string>> = {
  said: 'Set it to listen only and enter that, or keep whoever is on that wifi away from it.',
  taken: 'Look in its settings: set it to listen only and enter that.',
  perhaps:
    'See in its settings whether a phone may work it: set it to be looked at only, and enter that as listen only.',
};

const gravest = ['said', 'taken', 'perhaps'];
const levelsApart = (a: RemoteCommand, b: RemoteCommand): number => gravest.indexOf(a.known) - gravest.indexOf(b.known);

/** One unit that writes to one pilot, with every way in by which it can be made to. */
interface Found {
  readonly command: RemoteCommand;
  readonly entries: readonly RemoteEntry[];
}

const found = (remote: readonly RemoteEntry[]): Found[] => {
  const groups = new Map<string, Found>();
  for (const entry of remote) {
    for (const command of entry.commands) {
      if (command.what !== 'pilot') continue;
      const key = `${command.through} ${command.at}`;
      const known = groups.get(key);
      const worse = known === undefined || levelsApart(command, known.command) < 0 ? command : known.command;
      groups.set(key, { command: worse, entries: [...(known?.entries ?? []), entry] });
    }
  }
  return [...groups.values()];
};

const observed = (index: BoatIndex, { command: { at, through, known }, entries }: Found): Observation => ({
  about: [...new Set([through, at.split('.')[0] ?? at])],
  level: levelOf[known],
  says: `${unitName(index, at)} can be given a course by ${waysInWords(index, entries)}: ${unitName(index, through)} ${words[known]}.`,
  cure: `${cures[known]} A pilot obeys whoever speaks last: keep a hand near the helm while anybody works it from afar.`,
});

/** Whoever is on the wifi could steer, meaning to or not. */
export const pilotFromAPhone: Rule = {
  id: 'remote/pilot-from-a-phone',
  level: 'fault',
  title: 'A pilot can be given a course from a phone, or from ashore.',
  sources: ['practice-remote'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) => found(plan.remote).map((one) => observed(index, one)),
};
