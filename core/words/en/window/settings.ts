import { fixed } from '../formats.ts'

/** How fine the screen is. */
export interface Fineness {
  readonly pxPerMm: number
}

/** The page on which the screen is measured and the keys are listed. */
export const settings = {
  title: 'Screen and keys',
  keys: 'Keys',
  letterKeys: 'Keys of one character',
  on: 'on',
  off: 'off',
  switchedOff: 'Switched off.',
  screenSize: 'Size of this screen',
  measureWithCard:
    'Hold a bank card with its left edge to the left edge of the outline. Drag the right edge, or press the arrow keys ' +
    'or + and −, until the outline is as large as the card (85.6 mm wide). Numbers then have their true size.',
  cardWidth: 'Width of the card',
  fineness,
  notMeasured: (facts: Fineness) => `Not measured: assumed ${fineness(facts)}.`,
  measured: (facts: Fineness) => `✓ Measured: ${fineness(facts)}.`,
  asLargeAsCard: 'The outline is as large as the card',
  forgetMeasured: 'Forget the measurement',

  look: 'Colours',
  looks: { 'as-the-system': 'like the system', light: 'light', dark: 'dark' },
  torqueIn: 'Torque in',
  readFrom: 'Read from',
  metres: ({ distance }: { readonly distance: number }) => `${distance === 0.5 ? '½' : distance} m`,
}

function fineness({ pxPerMm }: Fineness): string {
  return `${fixed(pxPerMm, 2, 'px/mm')}, ${Math.round(pxPerMm * 25.4)} px to the inch`
}
