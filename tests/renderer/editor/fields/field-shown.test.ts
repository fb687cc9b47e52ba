import { describe, expect, it } from 'vitest'
import { fieldAt } from '../../../../renderer/editor/fields/field-shown.ts'

describe('the field at a place of the document', () => {
  it('is named without the numbers of lists, but along and across are told apart', () => {
    expect(fieldAt('fastenerGroups[2].thread.pitch')).toBe('fastenerGroups.thread.pitch')
    expect(fieldAt('fits[0].housing.marks[11].band')).toBe('fits.housing.marks.band')
    expect(fieldAt('fasteners[3].at[0]')).toBe('fasteners.at.0')
    expect(fieldAt('case.faces[0].outline[7][1]')).toBe('case.faces.outline.1')
    expect(fieldAt('beads[1].keepOut[0].size[1]')).toBe('beads.keepOut.size.1')
  })
})
