/** Where a mistake happened, without its message: a message may hold what a person typed. */
export function traceOf(error: unknown): string {
  if (!(error instanceof Error)) return 'something that is no error was thrown'
  const places = (error.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line))
  return [error.name, ...places.slice(0, 8)].join('\n')
}
