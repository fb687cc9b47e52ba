import { describe, expect, it } from 'vitest'
import { OpenBuild } from '../../../renderer/bench/open-build.svelte.ts'
import { engineOf } from '../../../renderer/gallery/engines.ts'
import { clientWith } from '../../../renderer/gallery/at-bench.ts'
import { MemoryBuild } from '../../../renderer/bench/memory-build.ts'
import { Crew } from '../../../renderer/people/crew.svelte.ts'
import { PracticeDesk } from '../../../renderer/practice/practice-desk.svelte.ts'
import { ShownLanguage } from '../../../renderer/shown-language.svelte.ts'

const begun = { id: 'a', number: '2026-001', name: 'Ferry', serial: '', person: 'Ada Brook' }
const crew = new Crew(clientWith({}), { name: () => 'Ada Brook', keep: () => Promise.resolve() })

describe('the texts of a spec', () => {
  it('follow the language in an open build, whose place stays', async () => {
    const language = await ShownLanguage.first({ system: ['en'] })
    const build = MemoryBuild.start(engineOf('skerry-3'), begun)
    const opened =
      build.ok && OpenBuild.from(clientWith({}), build.value.opened, crew, undefined, () => language.language)
    if (!opened || !opened.ok) throw new Error('the build does not open')
    const { value: openBuild } = opened
    const english = openBuild.spec
    openBuild.goTo(english.steps[1]!.id)
    await language.show('de')
    expect(openBuild.spec.steps.map(({ id }) => id)).toEqual(english.steps.map(({ id }) => id))
    expect(openBuild.step?.id).toBe(english.steps[1]!.id)
    expect(openBuild.step?.name).toBe('Wellenzeichen')
    await language.show('en')
    expect(openBuild.spec).toBe(english)
  })

  it('follow it at the engine that is practised on', async () => {
    const language = await ShownLanguage.first({ system: ['en'] })
    const desk = new PracticeDesk(
      clientWith({}),
      () => 'Ada Brook',
      () => language.language,
    )
    await desk.choose('skerry-3')
    await language.show('de')
    expect(desk.spec?.steps[1]?.name).toBe('Wellenzeichen')
  })
})
