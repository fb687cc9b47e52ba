import { describe, expect, it } from 'vitest'
import { problem, sentenceIn } from '../../../core/problem/index.ts'
import { en } from '../../../core/words/index.ts'
import { notSound } from '../../../renderer/sheet/not-sound.ts'
import { pageRules } from '../../../renderer/sheet/page-form.ts'

const margins = { foot: 'Build sheet 2026-001', numbered: en.sheet.page.numbered, reason: null }

describe('the printed pages of a build that can only be read', () => {
  it('say on each page what is wrong', () => {
    const flaw = notSound(en, problem('build-chain-broken', { entry: 5 }))
    expect(flaw?.mark).toBe('NOT AS CONFIRMED')
    expect(pageRules('A4', { ...margins, reason: flaw?.reason ?? null })).toContain(
      '@top-left { content: "NOT AS CONFIRMED. Entry 5 of this build is not what was once confirmed,',
    )
  })

  it('say that they are not the whole where only the end is of a newer program', () => {
    const newer = problem('build-newer', { entry: 9 })
    expect(notSound(en, newer)).toEqual({
      mark: 'INCOMPLETE',
      reason: `INCOMPLETE. ${sentenceIn(en, newer)}`,
    })
  })

  it('take no sign of the reason for the end of the text', () => {
    expect(pageRules('A4', { ...margins, reason: 'Entry "5"; } body { display: none }' })).toContain(
      'content: "Entry \\22 5\\22 ; } body { display: none }"',
    )
  })
})

describe('the printed pages of a sound build', () => {
  it('have the foot alone', () => {
    expect(notSound(en, null)).toBeNull()
    const rules = pageRules('A4', margins)
    expect(rules).not.toContain('@top-left')
    expect(rules).toContain('@bottom-left { content: "Build sheet 2026-001"')
  })
})
