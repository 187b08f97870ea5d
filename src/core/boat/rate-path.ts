/**
 * The path by which the interval of a message at a port is changed for one unit.
 *
 * @example ratePath('n2k', 127250) // 'ports.n2k.sends.127250.everyMs'
 */
export const ratePath = (port: string, message: number | string): string => `ports.${port}.sends.${message}.everyMs`;
