import type { ComparedKind, ComparedValue } from './compared-values.ts';
import { type Sample, startSample } from './sample.ts';
import { turnDeg } from './turn-deg.ts';

/** One source of one kind of value. */
export interface ValueSource<Source> {
  readonly source: Source;
  readonly kind: ComparedKind;
  readonly message: number | string;
  count: number;
  zeros: number;
  last: ComparedValue;
  lastUs: number | undefined;
  bytes: Uint8Array | string;
  /** of a heading: how often a course over ground stood beside it, and how often it was the very same */
  besideCourse: number;
  sameAsCourse: number;
  /** whole degrees of heading seen beside a course, as far as a few of them */
  readonly headings: Set<number>;
}

/** Two sources of one kind of value, and by how much the second differs from the first. */
export interface ValuePair<Source> {
  readonly a: ValueSource<Source>;
  readonly b: ValueSource<Source>;
  readonly differences: Sample;
  /** of headings: the variation by which the two were brought to one reference */
  readonly variations: Sample;
}

/** What is told of each source’s values beside those of the others. */
export interface ValueBook<Source> {
  take(said: {
    source: Source;
    message: number | string;
    value: ComparedValue;
    elapsedUs: number | undefined;
    bytes: Uint8Array | string;
  }): void;
  sources(): readonly ValueSource<Source>[];
  pairs(): readonly ValuePair<Source>[];
}

/** Values further apart in time than this are not held side by side (project choice). */
const besideUs = 2_000_000;
const mostSources = 16;
const mostHeadings = 8;
/** A heading this near a course is the course (project choice: what rounding to a tenth and to a step leaves). */
const sameDeg = 0.11;
const metresOfDegree = 60 * 1852;

const isAngle = (kind: ComparedKind): boolean =>
  kind === 'heading' || kind === 'course' || kind === 'wind-angle' || kind === 'variation';

const apartM = (a: ComparedValue, b: ComparedValue): number => {
  const northM = (b.value - a.value) * metresOfDegree;
  const eastM = turnDeg((b.second ?? 0) - (a.second ?? 0)) * metresOfDegree * Math.cos((a.value * Math.PI) / 180);
  return Math.hypot(northM, eastM);
};

/** How much the second value differs from the first; undefined where the two do not mean the same. */
const differenceOf = (a: ComparedValue, b: ComparedValue, variationDeg: number | undefined): number | undefined => {
  if (a.kind === 'position') return apartM(a, b);
  if (a.kind === 'depth') return a.datum === b.datum ? b.value - a.value : undefined;
  if (a.kind !== 'heading') return isAngle(a.kind) ? turnDeg(b.value - a.value) : b.value - a.value;
  if (a.reference === undefined || b.reference === undefined) return undefined;
  if (a.reference === b.reference) return turnDeg(b.value - a.value);
  if (variationDeg === undefined) return undefined;
  const toTrue = (one: ComparedValue): number => one.value + (one.reference === 'magnetic' ? variationDeg : 0);
  return turnDeg(toTrue(b) - toTrue(a));
};

/** Starts a book of values from every source of one boat. */
export const startValues = <Source>(): ValueBook<Source> => {
  const byKind = new Map<ComparedKind, ValueSource<Source>[]>();
  const pairs = new Map<ValueSource<Source>, Map<ValueSource<Source>, ValuePair<Source>>>();
  let variationDeg: number | undefined;

  const sourceOf = (
    source: Source,
    message: number | string,
    value: ComparedValue,
  ): ValueSource<Source> | undefined => {
    const list = byKind.get(value.kind) ?? [];
    byKind.set(value.kind, list);
    // A sentence may hold one heading twice, true and magnetic: two sources.
    const known = list.find(
      (one) => one.source === source && one.message === message && one.last.reference === value.reference,
    );
    if (known !== undefined || list.length >= mostSources) return known;
    const made: ValueSource<Source> = {
      source,
      kind: value.kind,
      message,
      count: 0,
      zeros: 0,
      last: value,
      lastUs: undefined,
      bytes: '',
      besideCourse: 0,
      sameAsCourse: 0,
      headings: new Set(),
    };
    list.push(made);
    return made;
  };

  const pairOf = (a: ValueSource<Source>, b: ValueSource<Source>): ValuePair<Source> => {
    const own = pairs.get(a) ?? new Map<ValueSource<Source>, ValuePair<Source>>();
    pairs.set(a, own);
    const known = own.get(b);
    if (known !== undefined) return known;
    const made = { a, b, differences: startSample(), variations: startSample() };
    own.set(b, made);
    return made;
  };

  const isBeside = (one: ValueSource<Source>, elapsedUs: number): boolean =>
    one.lastUs !== undefined && elapsedUs - one.lastUs <= besideUs && elapsedUs >= one.lastUs;

  const compare = (own: ValueSource<Source>, elapsedUs: number): void => {
    const list = byKind.get(own.kind) ?? [];
    for (const other of list) {
      if (other === own || other.source === own.source || !isBeside(other, elapsedUs)) continue;
      const [a, b] = list.indexOf(other) < list.indexOf(own) ? [other, own] : [own, other];
      const difference = differenceOf(a.last, b.last, variationDeg);
      if (difference === undefined) continue;
      const pair = pairOf(a, b);
      pair.differences.add(difference);
      if (variationDeg !== undefined) pair.variations.add(variationDeg);
    }
  };

  const besideCourse = (own: ValueSource<Source>, elapsedUs: number): void => {
    const course = (byKind.get('course') ?? []).find((one) => isBeside(one, elapsedUs));
    if (own.kind !== 'heading' || course === undefined) return;
    own.besideCourse += 1;
    if (own.headings.size < mostHeadings) own.headings.add(Math.round(own.last.value));
    if (Math.abs(turnDeg(own.last.value - course.last.value)) <= sameDeg) own.sameAsCourse += 1;
  };

  return {
    take({ source, message, value, elapsedUs, bytes }) {
      if (value.kind === 'variation') variationDeg = value.value;
      const own = sourceOf(source, message, value);
      if (own === undefined) return;
      own.count += 1;
      if (value.value === 0) own.zeros += 1;
      own.last = value;
      own.bytes = typeof bytes === 'string' ? bytes : bytes.slice();
      if (elapsedUs === undefined) return;
      own.lastUs = elapsedUs;
      compare(own, elapsedUs);
      besideCourse(own, elapsedUs);
    },
    sources: () => [...byKind.values()].flat(),
    pairs: () => [...pairs.values()].flatMap((own) => [...own.values()]),
  };
};
