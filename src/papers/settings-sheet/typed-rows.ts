import { shortName } from '../../core/boat/short-name.ts';
import { enteredBy } from '../../core/facts/entered-by.ts';
import { shipPapers } from '../../core/facts/ship-papers.ts';
import { typedIds, typedSettings } from '../../core/facts/typed-settings.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { How, TypedEntry } from '../../core/settings-sheet-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';

/** Names of what is aboard, as far as a settings sheet wants them. */
export interface SheetNames {
  readonly kit: ReadonlyMap<string, { readonly name: string; readonly place: string }>;
  readonly places: ReadonlyMap<string, { readonly name: string }>;
}

/** One thing to type into one unit, in words. */
export interface TypedRow {
  readonly key: string;
  readonly kit: string;
  readonly unit: string;
  readonly place: string;
  readonly what: string;
  /** in the unit of the device, and in the other; empty while something is missing */
  readonly type: string;
  readonly also: string;
  /** what it is counted from, how well it is known, or what is missing */
  readonly note: string;
  /** who may enter it, where not everybody may */
  readonly who: string;
  /** the same in few words */
  readonly whoBrief: string;
  readonly ifWrong: string;
  readonly stands: string;
  /** absent where nothing was read off it yet */
  readonly agrees?: boolean;
  readonly isMissing: boolean;
}

/** How well a figure is known, in words. */
export const howWords: Readonly<Record<How, string>> = {
  taped: 'measured',
  'at-sea': 'as tried at sea',
  papers: 'from papers',
  drawn: 'off the drawing, measure it',
  guessed: 'to start from, try it at sea',
};

const referenceWords: Readonly<Record<NonNullable<TypedEntry['reference']>, string>> = {
  surface: 'from the surface',
  transducer: 'from the transducer',
  keel: 'from the keel',
};

const missingWords: Readonly<Record<NonNullable<TypedEntry['missing']>, string>> = {
  'transducer-depth': 'say how deep the transducer lies below the water',
  'position-antenna': 'say which position antenna it reckons from',
  'ship-number': `the ${shipPapers['ship-number'].name} is not there yet`,
  'read-back': 'have a second person read the nine digits back before they are typed',
  'call-sign': 'the call sign is not there yet',
  'screen-units': 'look what units it shows, and write them down',
};

/** What is calibrated on the water: constants of an old head do not move over. */
const calibrated: ReadonlySet<TypedEntry['what']> = new Set(['log-factor', 'wind-offset']);

const figure = (shown: TypedEntry['shown']): string =>
  shown === undefined ? '' : `${shown.figure}${shown.in === '' || shown.in.startsWith('°') ? '' : ' '}${shown.in}`;

const noteOf = (entry: TypedEntry, name: (kit: string) => string): string => {
  const { reference, how, missing, setElsewhere, of, what, is } = entry;
  if (setElsewhere === true)
    return `leave at 0${of === undefined ? '' : ` for ${name(of)}`}: it is set nearer to the transducer`;
  return [
    ...(of === undefined ? [] : [`for ${name(of)}`]),
    ...(what === 'depth-offset' && reference === 'transducer' ? ['depth below the transducer is wanted'] : []),
    ...(reference === undefined || (what === 'depth-offset' && is === 0) ? [] : [referenceWords[reference]]),
    ...(how === undefined ? [] : [howWords[how]]),
    ...(how === 'guessed' && calibrated.has(what) ? ['what stood in an old head does not hold in a new one'] : []),
    ...(missing === undefined ? [] : [missingWords[missing]]),
  ].join('; ');
};

const rowOf = (names: SheetNames, entry: TypedEntry): TypedRow => {
  const name = (kit: string): string => names.kit.get(kit)?.name ?? kit;
  const place = names.kit.get(entry.kit)?.place ?? '';
  const { name: what, ifWrong } = typedSettings[entry.what];
  return {
    key: entry.id,
    kit: entry.kit,
    unit: shortName(name(entry.kit)),
    place: names.places.get(place)?.name ?? place,
    what,
    type: figure(entry.shown),
    also: figure(entry.also),
    note: noteOf(entry, name),
    who: entry.mayEnter === undefined ? '' : enteredBy[entry.mayEnter].says,
    whoBrief: entry.mayEnter === undefined ? '' : enteredBy[entry.mayEnter].brief,
    ifWrong,
    stands: figure(entry.stands?.shown),
    ...(entry.stands === undefined ? {} : { agrees: entry.stands.agrees }),
    isMissing: entry.missing !== undefined,
  };
};

/** Everything to type by the boat’s own measures, unit by unit, in the order in which it is typed. */
export const typedRows = (names: SheetNames, { typed }: Pick<Plan, 'typed'>): TypedRow[] =>
  typed
    .toSorted(
      (a, b) =>
        byCodeUnit(a.kit, b.kit) || typedIds.indexOf(a.what) - typedIds.indexOf(b.what) || byCodeUnit(a.id, b.id),
    )
    .map((entry) => rowOf(names, entry));
