/**
 * A failure the person can mend: bad input or a wrong command. Shown as one sentence, the place, and what to do; exit code 2.
 * `more` holds further problems of the same input, one line each. Anything else that is thrown is a fault in the program.
 *
 * @example throw new UserError({ says: 'This is not JSON.', place: 'line 3, column 7', whatToDo: 'Mend the comma there.' })
 */
export class UserError extends Error {
  readonly says: string;
  readonly place: string | undefined;
  readonly whatToDo: string;
  readonly more: readonly string[];

  constructor({
    says,
    place,
    whatToDo,
    more = [],
  }: {
    says: string;
    place?: string;
    whatToDo: string;
    more?: readonly string[];
  }) {
    super(says);
    this.name = 'UserError';
    this.says = says;
    this.place = place;
    this.whatToDo = whatToDo;
    this.more = more;
  }

  /** The whole message as printed at the terminal. */
  get text(): string {
    const sentence = [this.says, ...(this.place === undefined ? [] : [`At ${this.place}.`]), this.whatToDo].join(' ');
    return [sentence, ...this.more].join('\n');
  }
}
