/** What the parts of an engine are called, wherever they are named. */
export const engineParts = {
  fastener: ({ number }: { readonly number: string }) => `Fastener ${number}`,
  halves: { upper: 'upper', lower: 'lower' },
}
