import type { Need } from '../boat/boat-schema.ts';
import { byCodeUnit } from '../boat/ids.ts';
import { isAboard } from '../boat/phase.ts';
import { derivedReadings } from '../facts/derived-readings.ts';
import { readingsOf } from '../facts/message-readings.ts';
import { readingWords } from '../facts/reading-words.ts';
import type { PortNode } from './port-network.ts';
import type { Reaches } from './reaches.ts';
import { unitWords, type WhyNot } from './why-words.ts';

const notAboard = ({ network: { index, phase } }: Reaches, need: Need): WhyNot | undefined => {
  const away = [...index.boat.kit].filter((unit) => !isAboard(unit, phase)).sort((a, b) => byCodeUnit(a.id, b.id));
  for (const unit of away) {
    const sheet = index.sheetOf.get(unit.id);
    const port = sheet?.ports.find((entry) =>
      (entry.sends ?? []).some((sent) => readingsOf(sent).some((said) => said.reading === need.reading)),
    );
    const isTurned = sheet?.turns?.some((turn) => turn.toPort === port?.id) === true;
    if (port === undefined || isTurned) continue;
    const from = `${unit.id}.${port.id}`;
    const nothing = `Nothing aboard sends ${readingWords[need.reading]}`;
    const when = `in phase ${unit.phase ?? 1}`;
    // What comes and is then heard has been told before: this one comes and is still not heard.
    return unit.fate === 'goes'
      ? {
          link: { broken: 'source-leaves', from },
          says: `${nothing}: ${unit.name}, which did, leaves ${when}.`,
          cures: [],
        }
      : {
          link: { broken: 'source-not-aboard', from },
          says: `${nothing}: ${unit.name}, which does, comes aboard ${when}, and even then it does not reach ${unitWords(index, need.at)}.`,
          cures: [],
        };
  }
  return undefined;
};

/** A unit that would pass the reading on, if only something gave it to it. */
const waiting = (reaches: Reaches, need: Need): PortNode | undefined =>
  [...reaches.network.nodes.values()].find(
    (node) =>
      node.kit !== need.at &&
      node.turnsFrom.some(({ turn }) => turn.carries.some((carry) => carry.reading === need.reading)),
  );

const notMade = (reaches: Reaches, need: Need): WhyNot | undefined => {
  const [recipe] = derivedReadings.get(need.reading) ?? [];
  const { index, nodes } = reaches.network;
  const maker = [...nodes.values()].find((node) => node.gives.has(need.reading) && !node.carriedTo.has(need.reading));
  if (recipe === undefined || maker === undefined) return undefined;
  const missing = recipe.from
    .filter((reading) => !reaches.has(maker.kit, reading))
    .map((reading) => readingWords[reading]);
  if (missing.length === 0) return undefined;
  const unit = unitWords(index, maker.kit);
  return {
    link: { broken: 'no-source', from: maker.id },
    says: `${unit} works out ${readingWords[need.reading]} from ${recipe.from.map((reading) => readingWords[reading]).join(' and ')}, but ${missing.join(' and ')} ${missing.length > 1 ? 'do' : 'does'} not reach it.`,
    cures: missing.map((reading) => `Bring ${reading} to ${unit}.`),
  };
};

/** Why nothing of a reading leaves any port: it comes later, it lacks what it is made of, or there is no source at all. */
export const noSource = (reaches: Reaches, need: Need): WhyNot => {
  const why = notMade(reaches, need) ?? notAboard(reaches, need);
  if (why !== undefined) return why;
  const reading = readingWords[need.reading];
  const ready = waiting(reaches, need);
  const nothing = reaches.ownOf(need.at, need.reading).length > 0 ? 'Nothing else aboard' : 'Nothing aboard';
  if (ready === undefined) return { link: { broken: 'no-source' }, says: `${nothing} sends ${reading}.`, cures: [] };
  return {
    link: { broken: 'no-source', to: ready.id },
    says: `${nothing} sends ${reading}: ${unitWords(reaches.network.index, ready.kit)} would pass it on, but nothing joined to it gives it.`,
    cures: [],
  };
};
