/** A symbol on the line, in the forms of the open standard for circuit diagrams; `unknown` where the boat file does not say. */
export const powerSymbols = ['battery', 'fuse', 'breaker', 'switch', 'converter', 'load', 'bus', 'unknown'] as const;
export type PowerSymbol = (typeof powerSymbols)[number];

/**
 * One row of the power drawing and what hangs on it. From the bar it hangs on its symbols follow in order; then the line
 * ends at a load, a backbone, a free terminal or a bar of its own, on which `children` hang.
 */
export interface PowerNode {
  readonly key: string;
  /** ids it lights */
  readonly about: readonly string[];
  readonly symbols: readonly PowerSymbol[];
  /** what guards it, in words, over the line */
  readonly guard: string;
  /** its wire, under the line */
  readonly wire: string;
  readonly guessed: boolean;
  /** `bar` of a panel, `joint` of several ends on one circuit, `nothing` where no line leads to it */
  readonly end: 'load' | 'bus' | 'converter' | 'free' | 'bar' | 'joint' | 'nothing';
  readonly name: string;
  /** under the name, a line each */
  readonly facts: readonly string[];
  /** somebody has to look at it */
  readonly isOpen: boolean;
  readonly children: readonly PowerNode[];
}
