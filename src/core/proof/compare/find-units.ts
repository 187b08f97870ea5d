import { byCodeUnit } from '../../boat/ids.ts';
import { instanceOf } from '../survey/draft-sends.ts';
import { senderKind } from '../survey/sender-words.ts';
import type { SurveySender } from '../survey/survey-report.ts';
import { sendsWords } from '../survey/survey-words.ts';
import { sendersOf } from './find-messages.ts';
import { maskedName } from './masked-name.ts';
import { unitOfPort } from './planned-sends.ts';
import type { ProofStranger, ProofUnit, UnitState } from './proof-report.ts';
import { isLongEnough } from './rate-window.ts';
import type { SeenBus, SeenLine } from './seen.ts';

const instancesHeard = (senders: readonly SurveySender[]): ProofUnit['instances'] =>
  senders
    .flatMap(({ sends }) => sends)
    .map(({ pgn, parts }) => ({
      message: pgn,
      instances: [...new Set(parts.flatMap((part) => instanceOf(pgn, part) ?? []))].sort((a, b) => a - b),
    }))
    .filter(({ instances }) => instances.length > 0)
    .sort((a, b) => a.message - b.message);

const identityOf = (sender: SurveySender | undefined): { identity?: string } =>
  sender?.name === undefined ? {} : { identity: maskedName(sender.name.hex) };

/** A unit that sends nothing by itself is missed only where everybody was asked who they are, and others answered. */
const isDue = (bus: SeenBus, unit: string): boolean => {
  const { durationS } = bus.wire.time ?? {};
  const steady = bus.sends.filter((send) => send.unit === unit).flatMap(({ everyMs }) => everyMs ?? []);
  if (steady.length > 0 && isLongEnough(durationS, Math.min(...steady))) return true;
  return bus.watched.asked > 0 && bus.senders.some(({ name }) => name !== undefined);
};

const states = { identity: 'found', sure: 'found', alike: 'alike', doubtful: 'doubtful' } as const;

const foundUnit = (bus: SeenBus, unit: string): ProofUnit => {
  const match = bus.matches.matches.find((one) => one.unit === unit);
  const senders = sendersOf(bus, unit);
  const [own] = senders;
  const state: UnitState = match === undefined ? (isDue(bus, unit) ? 'silent' : 'not-due') : states[match.how];
  const len = senders.find(({ product }) => product?.len !== undefined)?.product?.len;
  return {
    unit,
    on: bus.id,
    state,
    ...(match === undefined ? {} : { by: match.how === 'identity' ? 'identity' : 'kind-and-messages' }),
    orElse: match?.orElse ?? [],
    addresses: senders.flatMap(({ addresses }) => addresses),
    ...identityOf(own),
    ...(own === undefined ? {} : { calls: senderKind(own).words }),
    instances: instancesHeard(senders),
    ...(len === undefined ? {} : { len }),
  };
};

/** What became of each planned unit of a bus. */
export const unitsOnWire = (bus: SeenBus): ProofUnit[] => bus.units.map(({ unit }) => foundUnit(bus, unit));

/** What became of the talker of a line: it is there where any of its sentences came. */
export const talkerOnLine = ({ id, sends, watched, wire }: SeenLine): ProofUnit[] => {
  if (id === '') return [];
  const heard = new Set(watched.line.records().map(({ formatter }) => formatter));
  const steady = sends.flatMap(({ everyMs }) => everyMs ?? []);
  const isHeard = sends.some(({ message }) => heard.has(String(message)));
  const isMissed = steady.length > 0 && isLongEnough(wire.time?.durationS, Math.min(...steady));
  return [
    {
      unit: unitOfPort(id),
      on: id,
      state: isHeard ? 'found' : isMissed ? 'silent' : 'not-due',
      ...(isHeard ? { by: 'talker' } : {}),
      orElse: [],
      addresses: [],
      instances: [],
    },
  ];
};

/** Senders of a bus that no planned unit stands for. */
export const strangersOn = (bus: SeenBus): ProofStranger[] =>
  bus.matches.strangers.flatMap(({ sender: at, couldBe }) => {
    const sender = bus.senders[at];
    if (sender === undefined) return [];
    return [
      {
        on: bus.id,
        ...(sender.address === undefined ? {} : { address: sender.address }),
        ...identityOf(sender),
        what: senderKind(sender).words,
        sends: sendsWords(sender),
        couldBe: [...couldBe].sort(byCodeUnit),
      },
    ];
  });
