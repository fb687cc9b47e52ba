/** A recorded instant (UTC, ISO 8601) as the wall clock of this machine shows it: `2026-03-14 09:05:12`. */
export function dayAndTime(at: string): string {
  const instant = new Date(at)
  const two = (part: number) => String(part).padStart(2, '0')
  return `${instant.getFullYear()}-${two(instant.getMonth() + 1)}-${two(instant.getDate())} ${timeOfDay(at)}`
}

/** `09:05:12`. */
export function timeOfDay(at: string): string {
  const instant = new Date(at)
  return [instant.getHours(), instant.getMinutes(), instant.getSeconds()]
    .map((part) => String(part).padStart(2, '0'))
    .join(':')
}

/** The day at the bench, as it stands on the wall: `2026-03-14`. */
export function today(): string {
  const now = new Date()
  const two = (part: number) => String(part).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}
