import type { BoatIndex } from '../boat/boat-index.ts';
import type { LineKind } from '../boat/boat-schema.ts';
import type { Plug } from '../boat/sheet.ts';
import type { LineEntry, ShoppingEntry } from '../plan-shape.ts';
import { metreItem, readyItem } from '../prices/price-list.ts';
import { busPlugOf, ofTheBus } from './bus-plug.ts';
import { coaxCable } from './coax-cable.ts';
import type { CutLine } from './cut-lines.ts';
import { feedCable } from './feed-cable.ts';
import { fieldPlugOf, gradeOf, needsMouldedLead, type OrderInput, plugAt } from './line-cutter.ts';
import type { Doubt, Want } from './want.ts';

const kindWords: Readonly<Record<LineKind, string>> = {
  trunk: 'trunk cable',
  drop: 'drop cable',
  ethernet: 'Ethernet cable',
  pair: 'twisted pair cable',
  'single-wire': 'single wire',
  analog: 'screened sensor cable',
  'engine-can': 'engine bus cable',
  modbus: 'twisted pair cable for Modbus',
  coax: 'coaxial cable',
  video: 'video cable',
  audio: 'audio cable',
  usb: 'USB cable',
  feed: 'two-core power cable',
  feeder: 'feeder cable',
};

const groupOf = (kind: LineKind): ShoppingEntry['kind'] => (kind === 'trunk' || kind === 'drop' ? kind : 'cable');

/** The gender that plugs into another. */
export const opposite = { male: 'female', female: 'male', none: 'none' } as const;

const idPart = (end: string): string => end.replace(/[^a-z0-9]+/g, '-');

/** The item of the shopping list that the lead of a line with moulded plugs is. */
const leadItem = ({ kind, from, to }: LineEntry): string => `lead-${kind}-${idPart(from)}-${idPart(to)}`;

/** The item of the shopping list that a piece of a line is. */
export const pieceItem = (
  input: OrderInput,
  line: LineEntry,
  { mm, made }: { readonly mm: number; readonly made: boolean },
): string => {
  const grade = gradeOf(input, line);
  if (!made) return readyItem({ kind: line.kind, grade, mm });
  if (needsMouldedLead(input.index, line)) return leadItem(line);
  return (feedCable(input, line) ?? coaxCable(input, line))?.id ?? metreItem({ kind: line.kind, grade });
};

const metresWords = (mm: number): string => `${Number((mm / 1000).toFixed(3))} m`;

/** A plug that is fitted aboard, and what it is weighed at where its price is not known. */
export interface FieldPlug {
  readonly want: Want;
  readonly weighs: number;
}

/** One plug to be fitted aboard for a line, by its connector; absent where none can be bought for that. */
export const fieldPlug = (
  input: OrderInput,
  line: LineEntry,
  { connector, gender, why }: { connector: string; gender: Plug['gender']; why: string },
): FieldPlug | undefined => {
  const field = fieldPlugOf.get(connector);
  if (field === undefined || connector === 'leads') return undefined;
  const id = ofTheBus.has(connector) ? `${field.name}-field-plug-${gender}` : `plug-${idPart(connector)}-${gender}`;
  const each = input.prices.each(id, field.price);
  const item = `${field.name} plug, ${gender}, to be fitted aboard`;
  const want: Want = { id, item, kind: 'plug', by: 'piece', count: 1, each, for: [line.id], why };
  return { want, weighs: each ?? field.price };
};

/** The plugs fitted aboard to the ends of a cable by the metre, each of the gender that meets what it plugs into. */
export const endPlugs = (
  input: OrderInput,
  line: LineEntry,
  why = 'The cable is made up aboard, with a plug at each end.',
): FieldPlug[] => {
  if (line.kind === 'trunk' || line.kind === 'drop') {
    const connector = `n2k-${busPlugOf(gradeOf(input, line) ?? 'light')}`;
    return (['male', 'female'] as const).flatMap((gender) => fieldPlug(input, line, { connector, gender, why }) ?? []);
  }
  return [line.from, line.to].flatMap((end) => {
    const plug = plugAt(input.index, end);
    if (plug === undefined || plug.fixedLead !== undefined) return [];
    return fieldPlug(input, line, { connector: plug.connector, gender: opposite[plug.gender], why }) ?? [];
  });
};

const plugWords = (index: BoatIndex, end: string): string => {
  const plug = plugAt(index, end);
  return plug === undefined ? 'bare wires' : `${plug.connector} ${opposite[plug.gender]}`;
};

const leadWant = (input: OrderInput, { line }: CutLine, mm: number, doubt: Doubt | undefined): Want => {
  const id = leadItem(line);
  const { index, prices } = input;
  return {
    id,
    item: `${kindWords[line.kind]} with moulded plugs, ${plugWords(index, line.from)} to ${plugWords(index, line.to)}, at least ${metresWords(mm)}`,
    kind: 'cable',
    by: 'piece',
    count: 1,
    each: prices.each(id, undefined),
    for: [line.id],
    why: 'One of its plugs is its maker’s own or cannot be fitted aboard, so the lead is bought with both plugs on.',
    doubt,
  };
};

/** The cable one line is made of, with the plugs for what is made up aboard. `doubt`: what could change its length. */
export const cableWants = (input: OrderInput, cutLine: CutLine, doubt: Doubt | undefined): Want[] => {
  const { line, cut } = cutLine;
  const grade = gradeOf(input, line);
  const words = `${grade === undefined ? '' : `${grade} `}${kindWords[line.kind]}`;
  return (cut?.pieces ?? []).flatMap(({ mm, made }): Want[] => {
    if (made && needsMouldedLead(input.index, line)) return [leadWant(input, cutLine, mm, doubt)];
    const shared = { kind: groupOf(line.kind), for: [line.id], doubt };
    const id = pieceItem(input, line, { mm, made });
    if (!made) {
      const each = input.prices.known(
        line.kind,
        id,
        input.prices.ready(line.kind, grade).find((entry) => entry.mm === mm)?.cost,
      );
      const why = 'Ready-made, and covers the longest its line could be.';
      return [{ ...shared, id, item: `${words}, ready-made, ${metresWords(mm)}`, by: 'piece', count: 1, each, why }];
    }
    const sized = feedCable(input, line) ?? coaxCable(input, line);
    const each = input.prices.known(line.kind, id, sized?.perM ?? input.prices.perM(line.kind, grade));
    const why = 'By the metre, cut to the longest each line could be.';
    return [
      { ...shared, id, item: `${sized?.words ?? words}, by the metre`, by: 'metre', count: mm / 1000, each, why },
      ...endPlugs(input, line).map(({ want }) => want),
    ];
  });
};
