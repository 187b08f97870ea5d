/** One analysis of a simulator: for every quantity its values, point by point. */
export interface RawPlot {
  readonly title: string;
  readonly values: ReadonlyMap<string, readonly number[]>;
}

const field = (header: string, name: string): string => new RegExp(`^${name}: *(.*)$`, 'm').exec(header)?.[1] ?? '';

const quantities = (header: string): string[] => {
  const [, list = ''] = header.split('Variables:\n');
  return list
    .trim()
    .split('\n')
    .map((line) => (line.trim().split(/\s+/)[1] ?? '').toLowerCase());
};

/**
 * Reads a raw file of the common circuit simulators: plots one after another, each a header in words and then the values as
 * doubles, low byte first, point by point. Real values only.
 */
export const readRawFile = (bytes: Buffer): RawPlot[] => {
  const plots: RawPlot[] = [];
  const mark = 'Binary:\n';
  for (let at = 0; at < bytes.length; ) {
    const headerEnd = bytes.indexOf(mark, at);
    if (headerEnd < 0) throw new Error('The raw file breaks off in a header.');
    const header = bytes.toString('latin1', at, headerEnd);
    const names = quantities(header);
    const points = Number(field(header, 'No. Points'));
    const values = new Map(names.map((name): [string, number[]] => [name, []]));
    at = headerEnd + mark.length;
    for (let point = 0; point < points; point += 1) {
      for (const name of names) {
        values.get(name)?.push(bytes.readDoubleLE(at));
        at += 8;
      }
    }
    plots.push({ title: field(header, 'Title').replace(/^\* /, ''), values });
  }
  return plots;
};
