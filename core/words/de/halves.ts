import { halvesIn } from '../formats/index.ts'

export const halves = { upper: 'oben', lower: 'unten', left: 'links', right: 'rechts' }

export const { namesOf, pairText } = halvesIn(halves)
