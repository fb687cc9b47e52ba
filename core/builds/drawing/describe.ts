import { describeHalf, describeJournal } from './describe-bearing.ts'
import { describeFastener } from './describe-fastener.ts'
import {
  describeBead,
  describeBore,
  describeDowel,
  describeFace,
  describeKeepOut,
  describePassage,
  describeThrust,
} from './describe-place.ts'
import { describeFacePart, describeGasket, describeThrow, describeWheel } from './describe-part.ts'
import { plain, type Description, type DescribedBuild } from './description.ts'

export type { Description, DescriptionLine, DescribedBuild } from './description.ts'

/**
 * What a thing of the drawing is and what became of it. `about` is the thing as the scene names it; null for what there
 * is nothing to be said of.
 */
export function descriptionOf(build: DescribedBuild, about: string): Description | null {
  const [kind, id = '', part = ''] = about.split('/')
  const { described } = build.words
  switch (kind) {
    case 'fastener':
      return describeFastener(build, id)
    case 'half':
      return describeHalf(build, id, part === 'lower' ? 'lower' : 'upper')
    case 'journal':
      return describeJournal(build, id)
    case 'thrust':
      return describeThrust(build, id)
    case 'throw':
      return describeThrow(build, id)
    case 'wheel':
      return describeWheel(build, id)
    case 'face-part':
      return describeFacePart(build, id)
    case 'gasket':
      return describeGasket(build, id)
    case 'dowel':
      return describeDowel(build, id)
    case 'oil-passage':
      return describePassage(build, id)
    case 'bead':
      return describeBead(build, id)
    case 'keep-out':
      return describeKeepOut(build, id, Number(part))
    case 'bore':
      return describeBore(build, Number(id))
    case 'face':
      return describeFace(build, id)
    case 'opening':
      return { title: described.opening, lines: [plain(described.openThrough)] }
    case 'nose':
      return { title: described.nose, lines: [plain(described.ofNose)] }
    case 'drive':
      return { title: described.drive, lines: [plain(described.ofDrive)] }
    default:
      return null
  }
}
