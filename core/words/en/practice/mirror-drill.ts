import type { RichText } from '../../rich.ts'

type Side = 'left' | 'top' | 'right' | 'bottom'
const noseAt = (nose: Side | null) => (nose === null ? '' : `, nose at the ${nose}`)

/** Shells and bolt numbers of a case that lies otherwise than printed. */
export const mirrorDrill = {
  printed: 'As the manual prints it',
  lies: {
    shell: ({ half, nose }: { readonly half: string; readonly nose: Side | null }) =>
      `The ${half} half of the case lies with its joint up${noseAt(nose)}.`,
    fastener: (of: { readonly face: string; readonly orientation: string; readonly nose: Side | null }) =>
      `${of.face}, the engine ${of.orientation}${noseAt(of.nose)}.`,
  },
  asks: {
    shell: ({ position, half }: { readonly position: string; readonly half: string }): RichText => [
      'Where does the shell of ',
      { strong: `${position} ${half}` },
      ' go? Tap it.',
    ],
    fastener: ({ number }: { readonly number: string }): RichText => [
      'Which is fastener ',
      { strong: number },
      '? Tap it.',
    ],
  },
  /** In the list of the drawing, without its name: where it lies on the sheet. */
  place: (of: {
    readonly number: number
    readonly of: number
    readonly from: 'left' | 'top'
    readonly aside: 'none' | 'low' | 'middle' | 'high'
  }) => {
    const sides =
      of.from === 'left'
        ? { low: 'near the top', middle: 'in the middle', high: 'near the foot' }
        : { low: 'at the left', middle: 'in the middle', high: 'at the right' }
    const aside = of.aside === 'none' ? '' : `, ${sides[of.aside]}`
    return `Place ${of.number} of ${of.of} from the ${of.from}${aside}`
  },
  slips: {
    'other-end': 'Not this one: it lies towards the other end. Count from the nose.',
    'other-side': 'Not this one: it lies on the other side.',
    both: 'Not this one: it lies towards the other end and on the other side.',
    elsewhere: 'Not this one.',
  },
  whys: {
    mirrored:
      'Here the face is seen from its other side than in the manual, so it is a mirror image: along the crank the places keep their order from the nose, across it the sides change over.',
    shell: ({ half }: { readonly half: string }) =>
      `The ${half} half was turned over to lie so: it runs the other way than it will on the engine. Saddles count from the nose.`,
    turned:
      'Here the case is only turned, not mirrored: turn the picture until both noses point the same way.',
    end: 'Here the engine is only turned, not mirrored: turn the picture until its sides match.',
  },
  shown: 'The right place is shown in blue.',
}
