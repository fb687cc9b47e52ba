/** The page on which the screen is measured and the keys are listed. */
export const settings = {
  title: 'Screen and keys',
  keys: 'Keys',
  close: 'Close',
  letterKeys: 'Keys of one character',
  on: 'on',
  off: 'off',
  switchedOff: 'Switched off.',
  screenSize: 'Size of this screen',
  measureWithCard:
    'Hold a bank card with its left edge to the left edge of the outline. Drag the right edge, or press the arrow keys ' +
    'or + and −, until the outline is as large as the card (85.6 mm wide). Numbers then have their true size.',
  cardWidth: 'Width of the card',
  /** Both are how fine the screen is. */
  fineness: ({ pxPerMm, pxPerInch }: { readonly pxPerMm: string; readonly pxPerInch: string }) =>
    `${pxPerMm} px/mm, ${pxPerInch} px to the inch`,
  notMeasured: ({ fineness }: { readonly fineness: string }) => `Not measured: assumed ${fineness}.`,
  measured: ({ fineness }: { readonly fineness: string }) => `✓ Measured: ${fineness}.`,
  asLargeAsCard: 'The outline is as large as the card',
  forgetMeasured: 'Forget the measurement',
}
