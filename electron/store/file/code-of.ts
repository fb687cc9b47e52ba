/** The code of an error of SQLite or the system; '' of any other. */
export function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : ''
}
