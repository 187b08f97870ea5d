import type { Need } from '../boat/boat-schema.ts';
import type { Port } from '../boat/sheet.ts';
import { readingWords } from '../facts/reading-words.ts';
import type { Break } from './nearest-break.ts';
import type { PortNetwork, PortNode } from './port-network.ts';
import type { Step } from './reach.ts';
import { usualBaud } from './signal.ts';
import { asMessage, heardAs, portWords, unitWords, type WhyNot } from './why-words.ts';

type Words = Pick<WhyNot, 'says' | 'cures'>;

const baudOf = (node: PortNode): number => node.port.baud ?? usualBaud;

/** The port that wrote the signal: a switch passes it on as it is. */
const writerOf = ({ node, signal, before }: Step): PortNode =>
  before !== undefined && before.signal === signal ? writerOf(before) : node;

const lineWords: Readonly<Record<NonNullable<Port['line']>, string>> = {
  differential: 'on a pair of wires',
  'single-ended': 'on a single wire',
  rs232: 'by RS-232',
  rs485: 'by RS-485',
};

const differingLines = ({ index }: PortNetwork, from: PortNode, to: PortNode): Words => {
  const [one, other] = [unitWords(index, from.kit), unitWords(index, to.kit)];
  const [sends, listens] = [from, to].map(({ port }) => (port.line === undefined ? '' : ` ${lineWords[port.line]}`));
  return {
    says: `${one} sends${sends} and ${other} listens${listens}; joined bare, it is luck if anything is heard.`,
    cures: [`Put an isolator or a converter between ${one} and ${other}.`],
  };
};

const directionWords = ({ index }: PortNetwork, { at, to }: Break & { to: PortNode }): Words => {
  const [from, into] = [at.node, to];
  const own = from.memberships.find(({ net }) => net.members.some(({ node }) => node === into));
  const listens = into.memberships.some((other) => other.net === own?.net && other.listens);
  const isFixed = from.port.role === 'listen' || into.port.role === 'talk';
  const wrong = [
    ...(own?.talks === true
      ? []
      : [`its port ${from.port.id} ${from.port.role === 'listen' ? 'can only' : 'is joined to'} listen`]),
    ...(listens ? [] : [`${portWords(index, into)} ${into.port.role === 'talk' ? 'can only' : 'is joined to'} talk`]),
  ];
  return {
    says: `${unitWords(index, from.kit)} should give ${readingWords[at.signal.reading]} to ${unitWords(index, into.kit)}, but ${wrong.join(' and ')}.`,
    cures: [
      isFixed
        ? 'Join them by ports that work this way round, or put a converter between.'
        : `Turn the join round: ${from.id} talks, ${into.id} listens.`,
    ],
  };
};

const generationOf = (dialect: string | undefined): string | undefined => {
  const generation = dialect?.split('/')[1];
  return generation === 'unknown' ? undefined : generation;
};

const generationWords = ({ index }: PortNetwork, from: PortNode, to: PortNode): Words => {
  const [one, other] = [unitWords(index, from.kit), unitWords(index, to.kit)];
  const [first, second] = [generationOf(from.port.dialect), generationOf(to.port.dialect)];
  const spoken =
    first === undefined
      ? "a generation of a maker's language that nobody has looked up"
      : `generation ${first} of a maker's language`;
  const heard = second === undefined ? 'a generation of it that nobody has looked up' : `generation ${second}`;
  return {
    says: `${one} speaks ${spoken} and ${other} ${heard}; it is not confirmed that they understand each other.`,
    cures: [
      `Look up one manual page, of ${one} or of ${other}: whether the two work together. Enter the answer on the join.`,
    ],
  };
};

const dialectWords = ({ index }: PortNetwork, from: PortNode, to: PortNode): Words => ({
  says: `${unitWords(index, from.kit)} and ${unitWords(index, to.kit)} do not speak the same maker's language.`,
  cures: [],
});

const unheardWords = ({ index }: PortNetwork, { at, to }: Break & { to: PortNode }): Words => {
  const reading = readingWords[at.signal.reading];
  const understood = heardAs(to, at.signal.reading);
  const sends = `${unitWords(index, at.node.kit)} sends ${reading}${asMessage(at.signal)}`;
  return understood === ''
    ? { says: `${sends}, and ${unitWords(index, to.kit)} does not hear it.`, cures: [] }
    : {
        says: `${sends}, and ${unitWords(index, to.kit)} hears it only as ${understood}.`,
        cures: [`Let ${unitWords(index, at.node.kit)} send ${understood}, if it can.`],
      };
};

const uncarriedWords = ({ index }: PortNetwork, { at, to }: Break & { to: PortNode }): Words => {
  const unit = unitWords(index, at.node.kit);
  const reading = readingWords[at.signal.reading];
  const isTurned = at.node.turnsFrom.some((entry) => entry.to === to);
  if (!isTurned && to.turnsFrom.some((entry) => entry.to === at.node))
    return {
      says: `${unit} hears ${reading} at its port ${at.node.port.id}, but carries only the other way, from ${to.port.id} to ${at.node.port.id}.`,
      cures: [],
    };
  return {
    says: `${unit} hears ${reading}${asMessage(at.signal)} at its port ${at.node.port.id}, but does not carry it to its port ${to.port.id}.`,
    cures: [],
  };
};

const unjoinedWords = ({ index }: PortNetwork, { at, to }: Break, need: Need): Words => {
  const gives = `${unitWords(index, at.node.kit)} gives ${readingWords[need.reading]}`;
  return to === undefined
    ? { says: `${gives}, but nothing leads from it to ${unitWords(index, need.at)}.`, cures: [] }
    : {
        says: `${gives}, but its port ${at.node.port.id} is not joined to ${portWords(index, to)}.`,
        cures: [`Join ${at.node.id} to ${to.id}.`],
      };
};

const wordsFor = (network: PortNetwork, need: Need, found: Break): Words => {
  const { broken, at, to } = found;
  if (to === undefined || broken === 'not-joined') return unjoinedWords(network, found, need);
  if (broken === 'baud-differs')
    return {
      says: `${unitWords(network.index, at.node.kit)} sends at ${at.signal.baud} baud, ${unitWords(network.index, to.kit)} listens at ${baudOf(to)}.`,
      cures: ['Set both to the same baud.'],
    };
  if (broken === 'direction-differs') return directionWords(network, { ...found, to });
  if (broken === 'line-differs') return differingLines(network, writerOf(at), to);
  if (broken === 'dialect-differs') return dialectWords(network, writerOf(at), to);
  if (broken === 'generation-unknown') return generationWords(network, writerOf(at), to);
  return broken === 'not-carried' ? uncarriedWords(network, { ...found, to }) : unheardWords(network, { ...found, to });
};

/** A break on the way in words, with its link. */
export const wordsOfBreak = (network: PortNetwork, need: Need, found: Break): WhyNot => ({
  link: {
    broken: found.broken,
    from: found.at.node.id,
    ...(found.to === undefined ? {} : { to: found.to.id }),
  },
  ...wordsFor(network, need, found),
});
