import packageJson from '../../package.json' with { type: 'json' };

/** Version of the program that computed a plan. */
export const program: string = packageJson.version;
