import { halfWords } from './halves.ts'

/** What the parts of an engine are called, wherever they are named. */
export const engineParts = {
  fastener: ({ number }: { readonly number: string }) => `Fastener ${number}`,
  /** A bearing by what it carries. */
  bearings: { main: 'Saddle', 'big-end': 'Big end', balance: 'Balance bearing' },
  ...halfWords,
  /** The size of a journal that was never ground. */
  standardSize: 'standard',
  /** What the threads of a group are used as. */
  threadStates: {
    dry: 'dry',
    oiled: 'oiled',
    sealant: 'with sealant',
    'thread-lock': 'with thread-lock',
  },
}
