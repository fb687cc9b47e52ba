/** A recorded instant (UTC, ISO 8601) by the clock of this machine: `09:05:12`, the same in every language. */
export function timeOfDay(at: string): string {
  const instant = new Date(at)
  if (Number.isNaN(instant.getTime())) return at
  return [instant.getHours(), instant.getMinutes(), instant.getSeconds()]
    .map((part) => String(part).padStart(2, '0'))
    .join(':')
}

/** The day by the clock of this machine as it is written down (ISO 8601): `2026-03-14`. */
export function today(): string {
  const now = new Date()
  const two = (part: number) => String(part).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}
