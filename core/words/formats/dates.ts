/** How a language writes days and times. What is neither is shown as it is. */
export interface Dates {
  /** Of an instant, or of a day by itself: `5 Mar 2026`. */
  readonly day: (at: string) => string
  /** By the clock of this machine, to the second: `5 Mar 2026, 09:05:12`. */
  readonly dayAndTime: (at: string) => string
  /** `5 Mar 2026, 09:05`. */
  readonly dayAndMinute: (at: string) => string
  /** The name of a month from 1 to 12, by itself: `March`. */
  readonly month: (number: number) => string
}

const day: Intl.DateTimeFormatOptions = { day: 'numeric', month: 'short', year: 'numeric' }
const minute: Intl.DateTimeFormatOptions = { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }
const second: Intl.DateTimeFormatOptions = { ...minute, second: '2-digit' }

/** In ISO 8601: a day, and an instant. */
const isoDay = /^\d{4}-\d\d-\d\d$/
const isoInstant = /^\d{4}-\d\d-\d\dT[\d:.]+(Z|[+-]\d\d:\d\d)$/

/** @param changed What is written otherwise than in `5 Mar 2026, 09:05:12` by the clock of this machine. */
export function datesOf(locale: string, changed: Intl.DateTimeFormatOptions = {}): Dates {
  const writers = {
    day: writer(locale, { ...day, ...changed }),
    dayAndTime: writer(locale, { ...day, ...second, ...changed }),
    dayAndMinute: writer(locale, { ...day, ...minute, ...changed }),
  }
  /** A day by itself has no time, and is that day on every clock; `Date` takes it for midnight in UTC. */
  const byItself = writer(locale, { ...day, ...changed, timeZone: 'UTC' })

  const month = writer(locale, { month: 'long', timeZone: 'UTC' })

  const written = (at: string, write: (instant: Date) => string): string => {
    const instant = new Date(at)
    if (Number.isNaN(instant.getTime())) return at
    if (isoDay.test(at)) return instant.toISOString().startsWith(at) ? byItself(instant) : at
    return isoInstant.test(at) ? write(instant) : at
  }
  return {
    day: (at) => written(at, writers.day),
    dayAndTime: (at) => written(at, writers.dayAndTime),
    dayAndMinute: (at) => written(at, writers.dayAndMinute),
    month: (number) => month(new Date(Date.UTC(2000, number - 1))),
  }
}

/** No line ends within a day; between the day and its time, one may. */
function writer(locale: string, parts: Intl.DateTimeFormatOptions): (instant: Date) => string {
  // Made at its first use, and once: to make an `Intl.DateTimeFormat` takes far longer than to use it.
  let format: Intl.DateTimeFormat | null = null
  return (instant) =>
    (format ??= new Intl.DateTimeFormat(locale, parts)).format(instant).replace(/(?<!,)\s/g, '\u00a0')
}
