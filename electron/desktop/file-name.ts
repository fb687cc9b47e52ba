/** A name as it can stand on any disk: no signs that separate or hide, not too long. */
export function plainFileName(typed: string): string {
  const plain = typed
    .replace(/[\p{Cc}\p{Cf}<>:"/\\|?*]/gu, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[. ]+|[. ]+$/g, '')
    .slice(0, 120)
    .trim()
  return plain === '' ? 'build sheet' : plain
}
