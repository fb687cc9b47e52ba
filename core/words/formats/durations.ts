/** `4:05` for 245 s. */
export function clock(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, '0')}`
}

/** `4 min 5 s` for 245 s. */
export function minutesAndSeconds(seconds: number): string {
  return `${Math.floor(seconds / 60)} min ${Math.floor(seconds % 60)} s`
}
