import { patterns, type SpecDocument } from '../../engine/index.ts'

type Grade = SpecDocument['fits'][number]['grades'][number]
type Look = Pick<Grade, 'colour' | 'pattern'>

/**
 * Colours that people with any colour vision tell apart (M. Okabe, K. Ito, Color Universal Design, 2008), without its black, which
 * the letters have.
 */
const colours = ['#E69F00', '#56B4E9', '#009E73', '#F0E442', '#0072B2', '#D55E00', '#CC79A7'] as const

/** A colour and a pattern that none of the grades has, until a person gives the colour of the maker’s paint. */
export function nextLook(grades: readonly Look[]): Look {
  const isTaken = (look: Look) =>
    grades.some(({ colour, pattern }) => colour === look.colour && pattern === look.pattern)
  for (let number = grades.length; ; number += 1) {
    const look = {
      colour: colours[number % colours.length]!,
      pattern: patterns[number % patterns.length]!,
    }
    if (!isTaken(look)) return look
  }
}
