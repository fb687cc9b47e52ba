/** What the parts of an engine are called, wherever they are named. */
export const engineParts = {
  fastener: ({ number }: { readonly number: string }) => `Fastener ${number}`,
  halves: { upper: 'upper', lower: 'lower' },
  /** What the threads of a group are used as. */
  threadStates: {
    dry: 'dry',
    oiled: 'oiled',
    sealant: 'with sealant',
    'thread-lock': 'with thread-lock',
  },
}
