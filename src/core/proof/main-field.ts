/** The field a message is sent for, by its place; all ones (signed: the largest positive) = no data. */
interface MainField {
  readonly at: number;
  readonly bytes: number;
  readonly signed: boolean;
}

const unsigned = (at: number, bytes: number): MainField => ({ at, bytes, signed: false });
const signed = (at: number, bytes: number): MainField => ({ at, bytes, signed: true });

/** Places as in the CANboat PGN database (source: pgn-database). */
const mainFields: ReadonlyMap<number, MainField> = new Map([
  [126_992, unsigned(4, 4)],
  [127_245, signed(4, 2)],
  [127_250, unsigned(1, 2)],
  [127_251, signed(1, 4)],
  [127_257, signed(3, 2)],
  [127_258, signed(4, 2)],
  [127_488, unsigned(1, 2)],
  [127_505, signed(1, 2)],
  [127_506, unsigned(3, 1)],
  [127_508, signed(1, 2)],
  [128_000, signed(1, 2)],
  [128_259, unsigned(1, 2)],
  [128_267, unsigned(1, 4)],
  [128_275, unsigned(6, 4)],
  [129_025, signed(0, 4)],
  [129_026, unsigned(4, 2)],
  [129_029, signed(7, 8)],
  [129_283, signed(2, 4)],
  [129_284, unsigned(1, 4)],
  [129_291, unsigned(4, 2)],
  [130_306, unsigned(1, 2)],
  [130_310, unsigned(1, 2)],
  [130_311, unsigned(2, 2)],
  [130_312, unsigned(3, 2)],
  [130_313, signed(3, 2)],
  [130_314, signed(3, 4)],
  [130_316, unsigned(3, 3)],
]);

const neverEmpty = (): boolean => false;

/** Tells whether a message of this number comes without data; for numbers not in the table the answer is always no. */
export const emptinessOf = (pgn: number): ((payload: Uint8Array) => boolean) => {
  const field = mainFields.get(pgn);
  if (field === undefined) return neverEmpty;
  const last = field.at + field.bytes - 1;
  return (payload) => {
    for (let at = field.at; at < last; at += 1) if (payload[at] !== 0xff) return false;
    return payload[last] === (field.signed ? 0x7f : 0xff);
  };
};
