import type { Point } from '../../drawing/point.ts';
import { between } from '../../drawing/point.ts';
import type { Shape } from '../../drawing/shapes.ts';
import { textWidthMm } from '../../drawing/text-width.ts';
import { isConverter } from '../../sheet/languages-of.ts';
import { codedKinds, codeOf } from '../../sheet/line-code.ts';
import { type KeyContents, type KeyEntry, lineKey } from '../../sheet/line-key.ts';
import { type WayBundle, wayBundles } from '../../sheet/way-bundles.ts';
import type { SheetContent } from '../framed-sheet.ts';
import type { KnownBoat } from '../known-boat.ts';
import { sheetText } from '../sheet-text.ts';
import { keyPlan, keyPlanMm } from './key-plan.ts';
import { matchColumnMm, matchColumns } from './match-columns.ts';
import { hiddenRing, partedDiamond, passageBars, type SheetSymbol, symbolWords } from './sheet-symbols.ts';
import { type WindowDrawing, windowDrawing } from './window-drawing.ts';
import { codeBox } from './window-notes.ts';
import { reachIn, scaleFor, windowSpans } from './window-plan.ts';
import { type ViewReach, type WindowSpan, type WindowView, windowView } from './window-view.ts';

/** The symbols of a window, as they stand in its key. */
const drawSymbol: Readonly<Partial<Record<SheetSymbol, (at: Point) => Shape>>> = {
  hidden: (at) => hiddenRing(at, { radiusMm: 1.7 }),
  parted: (at) => partedDiamond(at, { radiusMm: 1.8 }),
  passage: (at) => passageBars([at[0] - 4, at[1]], [at[0] + 4, at[1]], { radiusMm: 1.6 }),
};

const labelsIn = (shapes: readonly Shape[]): string[] =>
  shapes.flatMap((shape) => (shape.kind === 'group' ? [shape.label ?? '', ...labelsIn(shape.shapes)] : []));

/** Room in the key for the sample of an id. */
const sampleMm = 8;

/** What a code, a number in a balloon and an id on the drawing stand for. */
const nameEntries = (known: KnownBoat, bundles: readonly WayBundle[]): KeyEntry[] => {
  const [code] = known.codes.values();
  const sample = bundles.map(({ way }) => way.id).find((id) => textWidthMm(id, sheetText.label) < sampleMm) ?? 'id';
  return [
    ...(code === undefined
      ? []
      : [
          {
            words: 'place, with the numbers of its units',
            draw: ([from]: readonly Point[]) => (from ? codeBox(code, [from[0] + 0.6, from[1] - 2.1], []) : []),
          },
        ]),
    ...(bundles.length === 0
      ? []
      : [
          {
            words: 'way, and how many lines it has',
            draw: ([from]: readonly Point[]): Shape[] =>
              from
                ? [
                    {
                      kind: 'text',
                      xMm: from[0],
                      yMm: from[1] + 0.9,
                      text: sample,
                      ...sheetText.label,
                      ink: 'ink',
                    },
                  ]
                : [],
          },
        ]),
  ];
};

const keyContents = (known: KnownBoat, { bundles, shapes }: WindowDrawing): KeyContents => {
  const drawn = new Set(bundles.flatMap((bundle) => bundle.lanes.map((lane) => lane.code)));
  const there = new Set(labelsIn(shapes));
  const symbols = (Object.keys(symbolWords) as SheetSymbol[]).filter((symbol) => there.has(symbolWords[symbol]));
  return {
    codes: [
      ...codedKinds.map(codeOf).filter((code) => drawn.has(code)),
      ...[...drawn].filter((code) => !codedKinds.some((kind) => codeOf(kind) === code)),
    ],
    guessed: bundles.some(({ guessed }) => guessed),
    trunk: known.plan.buses.length > 0,
    converters: [...known.index.sheetOf.values()].some(isConverter),
    more: [
      ...symbols.map(
        (symbol): KeyEntry => ({
          words: symbolWords[symbol],
          draw: ([from, to]) =>
            from && to ? [drawSymbol[symbol]?.(between(from, to, 0.5))].flatMap((shape) => shape ?? []) : [],
        }),
      ),
      ...nameEntries(known, bundles),
    ],
  };
};

/** Room of the key at the foot: as many rows as all there is to explain takes. */
const keyRoomMm = 18;

interface Laid {
  readonly view: WindowView;
  readonly drawing: WindowDrawing;
}

const layWindow = (known: KnownBoat, span: WindowSpan, mmPerM: number, bundles: readonly WayBundle[]): Laid => {
  const { widthMm, heightMm } = known.area.content;
  const box = {
    leftMm: span.at === 0 ? 0 : matchColumnMm,
    rightMm: widthMm - (span.at === span.of - 1 ? 0 : matchColumnMm),
    topMm: 0,
    bottomMm: heightMm - keyRoomMm,
  };
  const view = windowView(span, box, mmPerM);
  return { view, drawing: windowDrawing(known, view, bundles) };
};

const mostWindows = 6;
/** With less room than this for a note nobody need try whether they find places. */
const crowdedMm2 = 400;

/** So much strain a note is borne with. */
const borne = 0.13;
/** A note that is not there is worse than any that stands ill. */
const lostStrain = 20;

const strainOf = (laid: readonly Laid[]): number => {
  const sum = laid.reduce((total, { drawing }) => total + drawing.strain + lostStrain * drawing.lost.length, 0);
  return (
    sum /
    Math.max(
      1,
      laid.reduce((total, { drawing }) => total + drawing.notes, 0),
    )
  );
};

/** The fewest windows in which the notes stand well, or those in which they stand best. */
const layView = (known: KnownBoat, reach: ViewReach, bundles: readonly WayBundle[]): Laid[] => {
  const { widthMm, heightMm } = known.area.content;
  let best: { laid: Laid[]; strain: number } | undefined;
  const scales = Array.from({ length: mostWindows }, (_, at) => {
    const sidesMm = Math.min(at, 2) * matchColumnMm;
    return scaleFor(reach, at + 1, { widthMm: widthMm - sidesMm, heightMm: heightMm - keyRoomMm });
  });
  const notes = known.boat.places.length + bundles.length / 2;
  for (const [at, mmPerM] of scales.entries()) {
    const of = at + 1;
    // as large as before: more windows would only part what fits together
    if (mmPerM <= (scales[at - 1] ?? 0)) continue;
    const roomMm2 = (reach.toM - reach.fromM) * (reach.belowM + reach.breakM) * mmPerM ** 2;
    if (roomMm2 < crowdedMm2 * notes && (scales[at + 1] ?? 0) > mmPerM) continue;
    const laid = windowSpans(reach, of, known.boat).map((span) => layWindow(known, span, mmPerM, bundles));
    const strain = strainOf(laid);
    if (best === undefined || strain < best.strain) best = { laid, strain };
    if (strain <= borne) break;
  }
  return best?.laid ?? [];
};

const titles = {
  side: 'the boat from starboard, every line on its way',
  top: 'the boat from above, every line on its way',
} as const;

const sheetOf = (known: KnownBoat, all: readonly Laid[], at: number, firstSheet: number): SheetContent[] => {
  const laid = all[at];
  if (laid === undefined) return [];
  const { view, drawing } = laid;
  const { widthMm, heightMm } = known.area.content;
  const sheets = all.map((_, order) => firstSheet + order);
  const keyTopMm = heightMm - keyRoomMm + 1;
  const isCut = all.length > 1;
  const keyWidthMm = widthMm - (isCut ? keyPlanMm.widthMm : 0);
  const key = lineKey({ contents: keyContents(known, drawing), widthMm: keyWidthMm, topMm: keyTopMm });
  const name = titles[view.span.reach.view];
  return [
    {
      title: isCut ? `${name}, part ${at + 1} of ${all.length} from the stern` : name,
      about: [],
      mmPerM: view.mmPerM,
      isAlong: true,
      shapes: [
        ...drawing.shapes,
        ...matchColumns(known, view, { aft: firstSheet + at - 1, forward: firstSheet + at + 1 }),
        key.shape,
        ...(isCut
          ? [
              keyPlan(
                known,
                { spans: all.map((one) => one.view.span), at, sheets },
                { leftMm: keyWidthMm, topMm: keyTopMm },
              ),
            ]
          : []),
      ],
    },
  ];
};

/** The boat from the side and from above with every line on its way, cut into windows where she is long or crowded. */
export const boatSheets = (known: KnownBoat, firstSheet: number): SheetContent[] => {
  const bundles = wayBundles({ plan: known.plan, index: known.index, withFeeds: true });
  const contents: SheetContent[] = [];
  for (const name of ['side', 'top'] as const) {
    const all = layView(known, reachIn(name, known.boat), bundles);
    const from = firstSheet + contents.length;
    contents.push(...all.flatMap((_, at) => sheetOf(known, all, at, from)));
  }
  return contents;
};
