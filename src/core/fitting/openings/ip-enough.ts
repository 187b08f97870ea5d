interface Mark {
  readonly dust: number | undefined;
  readonly water: number | undefined;
}

const digit = (text: string | undefined): number | undefined =>
  text === undefined || text === 'X' ? undefined : Number(text);

const marksOf = (code: string): Mark[] =>
  code.split('/').map((mark) => {
    const [dust, water] = mark.replace(/^IP/, '');
    return { dust: digit(dust), water: digit(water) };
  });

/** Second digits above this keep out water the boat lies in, which says nothing of jets. */
const jetsUpTo = 6;

const keepsDust = ({ dust }: Mark, need: number): boolean => dust !== undefined && dust >= need;
const keepsWater = ({ water }: Mark, need: number): boolean =>
  water !== undefined && water >= need && (water <= jetsUpTo || need > jetsUpTo);

/**
 * Whether an IP code, which may have several marks, keeps out all that is needed: each digit up to 6 implies the lower ones, 7,
 * 8 and 9 do not imply 5 or 6.
 *
 * @example ipEnough('IPX6/IPX7', ['IPX6', 'IPX7']) // true
 */
export const ipEnough = (code: string, need: readonly string[]): boolean =>
  need.flatMap(marksOf).every(({ dust, water }) => {
    const has = marksOf(code);
    const dry = water === undefined || has.some((mark) => keepsWater(mark, water));
    return dry && (dust === undefined || has.some((mark) => keepsDust(mark, dust)));
  });
