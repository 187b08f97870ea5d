/** Bits of an AIS message that is being written, most significant first. */
export class AisWriter {
  readonly #bits: number[] = [];

  number(value: number, bits: number): this {
    const whole = value < 0 ? value + 2 ** bits : value;
    for (let at = bits - 1; at >= 0; at -= 1) this.#bits.push(Math.floor(whole / 2 ** at) % 2);
    return this;
  }

  text(text: string, chars: number): this {
    for (let at = 0; at < chars; at += 1) this.number((text.padEnd(chars, '@').codePointAt(at) ?? 64) % 64, 6);
    return this;
  }

  /** The characters of the armour, and how many bits of the last are padding. */
  armour(): { readonly payload: string; readonly padBits: number } {
    const padBits = (6 - (this.#bits.length % 6)) % 6;
    const bits = [...this.#bits, ...new Array<number>(padBits).fill(0)];
    let payload = '';
    for (let at = 0; at < bits.length; at += 6) {
      const worth = bits.slice(at, at + 6).reduce((sum, bit) => sum * 2 + bit, 0);
      payload += String.fromCodePoint(worth < 40 ? worth + 48 : worth + 56);
    }
    return { payload, padBits };
  }
}

const charsInLine = 56;

/** The sentences that carry a message, cut as a receiver cuts it. */
export const vdmSentences = (
  writer: AisWriter,
  { formatter = 'VDM', group = 1 }: { formatter?: 'VDM' | 'VDO'; group?: number } = {},
): string[] => {
  const { payload, padBits } = writer.armour();
  const parts = Math.max(1, Math.ceil(payload.length / charsInLine));
  return Array.from({ length: parts }, (_unused, at) => {
    const piece = payload.slice(at * charsInLine, (at + 1) * charsInLine);
    const pad = at + 1 === parts ? padBits : 0;
    return `!AI${formatter},${parts},${at + 1},${parts > 1 ? group : ''},A,${piece},${pad}`;
  });
};
