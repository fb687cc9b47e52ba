import type { AmountText } from '../amount.ts'

/** Parts of sentences that stand in several of them. */
export const phrases = {
  /** What a scale showed, and with an adapter what the fastener got. */
  reading: ({
    onScale,
    atFastener,
  }: {
    readonly onScale: AmountText
    readonly atFastener: AmountText | null
  }) => (atFastener === null ? onScale : `${onScale} on the scale, ${atFastener} at the fastener`),
  angleInAll: ({ angle }: { readonly angle: AmountText }) => `${angle} in all`,
}
