/**
 * A failure the person can mend: bad input or a wrong command. Shown as one sentence, the place, and what to do; exit code 2.
 * Anything else that is thrown is a fault in the program.
 *
 * @example throw new UserError({ says: 'This is not JSON.', place: 'line 3, column 7', whatToDo: 'Mend the comma there.' })
 */
export class UserError extends Error {
  readonly says: string;
  readonly place: string | undefined;
  readonly whatToDo: string;

  constructor({ says, place, whatToDo }: { says: string; place?: string; whatToDo: string }) {
    super(says);
    this.name = 'UserError';
    this.says = says;
    this.place = place;
    this.whatToDo = whatToDo;
  }

  /** The whole message as printed at the terminal. */
  get text(): string {
    return [this.says, ...(this.place === undefined ? [] : [`At ${this.place}.`]), this.whatToDo].join(' ');
  }
}
