import { describe, expect, it } from 'vitest'
import { datesOf } from '../../../core/words/formats/index.ts'
import { languages, loadWords, type Language, type Words } from '../../../core/words/index.ts'

/** An instant by the clock of the machine that the test runs on, as the record has it: in UTC. */
const instant = (day: string, time: string) => new Date(`${day}T${time}`).toISOString()

/** A no-break space: no line ends within a day. */
const written = (text: string) => text.replaceAll('_', '\u00a0')

async function inEach(text: (dates: Words['dates']) => string): Promise<Readonly<Record<Language, string>>> {
  const texts = await Promise.all(
    languages.map(async (each) => [each, text((await loadWords(each)).dates)] as const),
  )
  return Object.fromEntries(texts) as Record<Language, string>
}

describe('days and times', () => {
  it('are written as the language writes them, by the clock of the machine, to the second', async () => {
    const at = instant('2026-11-29', '14:03:05')
    expect(await inEach(({ dayAndTime }) => dayAndTime(at))).toEqual({
      en: written('29_Nov_2026, 14:03:05'),
      de: '29.11.2026, 14:03:05',
      es: written('29_nov_2026, 14:03:05'),
    })
  })

  it('name a month by itself', async () => {
    expect(await inEach(({ month }) => month(3))).toEqual({ en: 'March', de: 'März', es: 'marzo' })
    expect(await inEach(({ month }) => month(12))).toEqual({
      en: 'December',
      de: 'Dezember',
      es: 'diciembre',
    })
  })

  it('tell the day from the month in the first days of a year', async () => {
    const at = instant('2026-03-04', '09:05:00')
    expect(await inEach(({ dayAndMinute }) => dayAndMinute(at))).toEqual({
      en: written('4_Mar_2026, 09:05'),
      de: '04.03.2026, 09:05',
      es: written('4_mar_2026, 09:05'),
    })
  })

  it.each(['23:59:59', '00:00:00'])('stay on their day at %s', async (time) => {
    const at = instant('2026-12-31', time)
    expect(await inEach(({ dayAndTime }) => dayAndTime(at))).toEqual({
      en: written(`31_Dec_2026, ${time}`),
      de: `31.12.2026, ${time}`,
      es: written(`31_dic_2026, ${time}`),
    })
    expect(await inEach(({ day }) => day(at))).toEqual({
      en: written('31_Dec_2026'),
      de: '31.12.2026',
      es: written('31_dic_2026'),
    })
  })

  it.each([
    ['America/Los_Angeles', '30_Apr_2026'],
    ['UTC', '1_May_2026'],
    ['Pacific/Auckland', '1_May_2026'],
  ])('stay on the day that was written down, in %s', (timeZone, ofInstant) => {
    const { day, dayAndTime } = datesOf('en-GB', { timeZone })
    expect(day('2026-05-01')).toBe(written('1_May_2026'))
    expect(dayAndTime('2026-05-01')).toBe(written('1_May_2026'))
    expect(day('2026-05-01T03:00:00.000Z')).toBe(written(ofInstant))
  })

  it.each(['', 'soon', '7', '2026', '2026-13-41', '2026-02-30', '2026-02-28T99:00:00.000Z', '03/04/2026'])(
    'are shown as they are where they are none: “%s”',
    async (none) => {
      for (const shown of [
        await inEach(({ day }) => day(none)),
        await inEach(({ dayAndTime }) => dayAndTime(none)),
        await inEach(({ dayAndMinute }) => dayAndMinute(none)),
      ])
        expect(shown).toEqual({ en: none, de: none, es: none })
    },
  )

  it('stand in sentences as the language writes them', async () => {
    const facts = { name: 'Click 60', on: '2027-04-03' }
    const sentences = await Promise.all(
      languages.map(async (each) => (await loadWords(each)).problems['calibration-in-future'](facts)),
    )
    expect(sentences.map((text) => /[^ ]*2027/.exec(text)?.[0])).toEqual([
      written('3_Apr_2027'),
      '03.04.2027',
      written('3_abr_2027'),
    ])
  })
})
