import type { Hears, Plug, Port, Sheet } from '../boat/sheet.ts';

const isEmpty = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && Object.keys(value).length === 0;

/** A thing without the parts in which nothing is said. */
const tidied = <Of extends object>(of: Of): Of =>
  // reason: only lists and objects that may be left out are ever empty here; plugs and ports are put back by their maker
  Object.fromEntries(Object.entries(of).filter(([, value]) => value !== undefined && !isEmpty(value))) as Of;

const tidyPlug = (plug: Plug): Plug => tidied(plug);

/** A list of messages with nothing in it stays: it says that there are none. */
const tidyPort = (port: Port): Port =>
  port.hears === undefined ? port : { ...port, hears: port.hears.map((one): Hears => tidied(one)) };

/** A sheet without what forms leave behind that says nothing: lists with nothing in them, a network of one port. Pure. */
export const tidySheet = ({ together, ...sheet }: Sheet): Sheet => ({
  ...tidied({ ...sheet, together: (together ?? []).filter((group) => group.length > 1) }),
  plugs: sheet.plugs.map(tidyPlug),
  ports: sheet.ports.map(tidyPort),
});
