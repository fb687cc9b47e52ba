import { describe, expect, it } from 'vitest'
import { documentIn } from '../../../core/drafts/index.ts'
import { placeInFile, placeInSpec } from '../../../core/engine/index.ts'
import { textIn } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'
import { demoText } from './demo.ts'

const document = {
  ...documentIn(demoText('skerry-3')),
  fastenerGroups: [{ id: 'group-1', name: 'Case bolts' }],
}
const path = ['fastenerGroups', 0, 'acrossFlats']

describe('a place in a spec', () => {
  it('is said by what things are called on the screen', () => {
    expect(textIn(en, en.phrases, placeInSpec(document, path))).toBe(
      'fastener group “Case bolts”, across flats',
    )
  })

  it('is said by its keys and ids to who looks for it in the file', () => {
    expect(textIn(en, en.phrases, placeInFile(document, path))).toBe(
      'fastener group “group-1”, “acrossFlats”',
    )
  })

  it('keeps a key that has no name of its own', () => {
    expect(textIn(en, en.phrases, placeInSpec(document, ['somethingElse']))).toBe('“somethingElse”')
  })
})
