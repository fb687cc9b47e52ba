import { describe, expect, it } from 'vitest'
import {
  Speaker,
  voiceFor,
  type SpeakerSettings,
  type Voice,
} from '../../../renderer/speech/speaker.svelte.ts'

const alba: Voice = { name: 'Alba', lang: 'en-GB', default: false, localService: true }
const borja: Voice = { name: 'Borja', lang: 'es-ES', default: true, localService: true }
const cloud: Voice = { name: 'Cloud', lang: 'en-US', default: true, localService: false }

/** A machine with these voices; what it does is noted. */
function machine(voices: readonly Voice[], change: Partial<SpeakerSettings> = {}) {
  const done: string[] = []
  let changed = () => undefined as void
  let there = voices
  const speaker = new Speaker(
    {
      getVoices: () => there,
      speak: (text, voice, rate) => done.push(`${voice.name} ${rate.toFixed(1)}: ${text}`),
      cancel: () => done.push('cancel'),
      addEventListener: (_, heard) => void (changed = heard),
    },
    () => ({ speaks: true, rate: 1, voice: null, language: 'en', ...change }),
  )
  return { speaker, done, come: (later: readonly Voice[]) => ((there = later), changed()) }
}

describe('prompts said aloud', () => {
  it('cut off the one before, and are not said twice', () => {
    const { speaker, done } = machine([alba])
    speaker.prompt('six, twenty-four newton metres')
    speaker.prompt('six, twenty-four newton metres')
    speaker.prompt('seven, twenty-four newton metres')
    expect(done).toEqual([
      'cancel',
      'Alba 1.0: six, twenty-four newton metres',
      'cancel',
      'Alba 1.0: seven, twenty-four newton metres',
    ])
  })

  it('are said again, and more slowly, when a person asks', () => {
    const { speaker, done } = machine([alba], { rate: 1.3 })
    speaker.prompt('six')
    speaker.again()
    speaker.slower()
    expect(done.filter((each) => each !== 'cancel')).toEqual([
      'Alba 1.3: six',
      'Alba 1.3: six',
      'Alba 0.8: six',
    ])
  })

  it('are off until a person switches them on', () => {
    const { speaker, done } = machine([alba], { speaks: false })
    speaker.prompt('six')
    speaker.again()
    expect(done).toEqual([])
    expect(speaker.speaks).toBe(false)
    speaker.example('six')
    expect(done).toEqual(['cancel', 'Alba 1.0: six'])
  })

  it('are cut off and forgotten when the build is left: coming back says them', () => {
    const { speaker, done } = machine([alba])
    speaker.prompt('six')
    speaker.quiet()
    speaker.prompt('six')
    expect(done.filter((each) => each.startsWith('Alba'))).toHaveLength(2)
  })

  it('are not said where there is no voice for them, and are once one comes', () => {
    const { speaker, done, come } = machine([borja])
    speaker.prompt('six')
    expect(speaker.voice).toBeNull()
    expect(done).toEqual(['cancel'])
    come([borja, alba])
    speaker.prompt('seven')
    expect(done.at(-1)).toBe('Alba 1.0: seven')
  })
})

describe('the voice', () => {
  it('is one that needs no network, the system’s own first', () => {
    expect(voiceFor([cloud, alba], null)).toBe(alba)
    expect(voiceFor([alba, { ...alba, name: 'Own', default: true }], null)?.name).toBe('Own')
    expect(voiceFor([cloud], null)).toBeNull()
  })

  it('is the one that was chosen where it is there, over the network too', () => {
    expect(voiceFor([alba, cloud], 'Cloud')).toBe(cloud)
    expect(voiceFor([alba], 'Cloud')).toBe(alba)
  })
})
