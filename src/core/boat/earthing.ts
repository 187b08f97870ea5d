import * as z from 'zod';

/** What the metal of a unit is joined to inside it; what is left out is not known. */
export const earthingSchema = z
  .strictObject({
    /** what its case, base or housing is made of where a hand can touch it */
    body: z.exactOptional(z.enum(['metal', 'plastic'])),
    /** whether its metal case is its minus */
    bodyTo: z.exactOptional(z.enum(['negative', 'nothing'])),
    /** of an engine: starter, alternator and senders return over the block, or over wires of their own */
    poles: z.exactOptional(z.enum(['block', 'isolated'])),
    /** where the braid of its coax sockets lies */
    braidTo: z.exactOptional(z.enum(['body', 'negative', 'nothing'])),
    /** where the shield of its data sockets lies */
    shieldTo: z.exactOptional(z.enum(['body', 'negative', 'nothing'])),
    /** it carries the shield of one of its sockets on to the others */
    shieldThrough: z.exactOptional(z.boolean()),
    /** whether its signal returns by its body, as that of a sender with one wire */
    signalTo: z.exactOptional(z.enum(['body', 'nothing'])),
  })
  .meta({ id: 'Earthing' });
export type Earthing = z.infer<typeof earthingSchema>;
