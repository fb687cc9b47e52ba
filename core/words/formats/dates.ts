/** How a language writes days and times. What is neither is shown as it is. */
export interface Dates {
  /** Of an instant, or of a day by itself: `5 Mar 2026`. */
  readonly day: (at: string) => string
  /** By the clock of this machine, to the second: `5 Mar 2026, 09:05:12`. */
  readonly dayAndTime: (at: string) => string
  /** `5 Mar 2026, 09:05`. */
  readonly dayAndMinute: (at: string) => string
}

const day: Intl.DateTimeFormatOptions = { day: 'numeric', month: 'short', year: 'numeric' }
const minute: Intl.DateTimeFormatOptions = { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }
const second: Intl.DateTimeFormatOptions = { ...minute, second: '2-digit' }

/** In ISO 8601: a day, and an instant. */
const isoDay = /^\d{4}-\d\d-\d\d$/
const isoInstant = /^\d{4}-\d\d-\d\dT[\d:.]+(Z|[+-]\d\d:\d\d)$/

/** @param figures The parts of a day that are written otherwise than `5 Mar 2026`. */
export function datesOf(locale: string, figures: Intl.DateTimeFormatOptions = {}): Dates {
  const ofDay = writer(locale, { ...day, ...figures })
  /** A day by itself has no time, and is that day on every clock: `Date` takes it for midnight in UTC. */
  const written = (at: string, ofInstant: (instant: Date) => string): string => {
    if (isoDay.test(at)) return shown(at, `${at}T12:00:00`, ofDay)
    return isoInstant.test(at) ? shown(at, at, ofInstant) : at
  }
  const toTheSecond = writer(locale, { ...day, ...figures, ...second })
  const toTheMinute = writer(locale, { ...day, ...figures, ...minute })
  return {
    day: (at) => written(at, ofDay),
    dayAndTime: (at) => written(at, toTheSecond),
    dayAndMinute: (at) => written(at, toTheMinute),
  }
}

function shown(at: string, time: string, write: (instant: Date) => string): string {
  const instant = new Date(time)
  return Number.isNaN(instant.getTime()) ? at : write(instant)
}

/** No line ends within a day; between the day and its time, one may. */
function writer(locale: string, parts: Intl.DateTimeFormatOptions): (instant: Date) => string {
  /** Made at its first use, and once: to make an `Intl.DateTimeFormat` takes far longer than to use it. */
  let format: Intl.DateTimeFormat | null = null
  return (instant) =>
    (format ??= new Intl.DateTimeFormat(locale, parts)).format(instant).replace(/(?<!,)\s/g, '\u00a0')
}
