import { tellHalf, tellJournal } from './describe-bearing.ts'
import { tellFastener } from './describe-fastener.ts'
import {
  tellBead,
  tellBore,
  tellDowel,
  tellFace,
  tellKeepOut,
  tellPassage,
  tellThrust,
} from './describe-place.ts'
import { plain, type Tell, type Told } from './description.ts'

export type { Tell, TellLine, Told } from './description.ts'

/**
 * What a thing of the drawing is and what became of it. `about` is the thing as the scene names it; null for what there
 * is nothing to be said of.
 */
export function tellOf(told: Told, about: string): Tell | null {
  const [kind, id = '', part = ''] = about.split('/')
  switch (kind) {
    case 'fastener':
      return tellFastener(told, id)
    case 'half':
      return tellHalf(told, id, part === 'lower' ? 'lower' : 'upper')
    case 'journal':
      return tellJournal(told, id)
    case 'thrust':
      return tellThrust(told, id)
    case 'dowel':
      return tellDowel(told, id)
    case 'oil-passage':
      return tellPassage(told, id)
    case 'bead':
      return tellBead(told, id)
    case 'keep-out':
      return tellKeepOut(told, id, Number(part))
    case 'bore':
      return tellBore(told, Number(id))
    case 'face':
      return tellFace(told, id)
    case 'opening':
      return { title: 'Opening', lines: [plain('Open through this face: nothing seals or clamps here')] }
    case 'nose':
      return { title: 'Nose', lines: [plain('The front end of the crank: everything is counted from here')] }
    case 'drive':
      return { title: 'Drive end', lines: [plain('The end of the crank that drives, opposite the nose')] }
    default:
      return null
  }
}
