/** As many changes as are announced one by one to who comes again. */
const mostReported = 1000

/**
 * The change to follow from: the one that was seen last, or, where too much was added since to be announced one by one, the last there is; so too
 * where the archive is behind what was seen, as after it was restored from a backup.
 */
export function followingFrom(seen: number, last: number): number {
  return seen > last || last - seen > mostReported ? last : seen
}
