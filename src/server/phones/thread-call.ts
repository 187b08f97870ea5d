import { UserError } from '../../core/boat/user-error.ts';
import type { PhonesSwitch } from './phones-switch.ts';

/** What the thread that serves phones is asked to do. */
export interface ThreadCall {
  readonly call: number;
  readonly what: Exclude<keyof PhonesSwitch, 'close'>;
  readonly id?: string;
}

/** What came of a call: a value, or what a person is to be told. */
export type ThreadReply =
  | { readonly call: number; readonly value: unknown }
  | { readonly call: number; readonly says: string; readonly place: string | undefined; readonly whatToDo: string };

/** A refusal as it was thrown in the thread. */
export const refusalIn = ({ says, place, whatToDo }: Extract<ThreadReply, { says: string }>): UserError =>
  new UserError({ says, whatToDo, ...(place === undefined ? {} : { place }) });
