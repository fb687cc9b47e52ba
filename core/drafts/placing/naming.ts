const longestId = 40
const idParts = /^(.*?)(\d*)$/
const numberParts = /^([A-Z]?)(\d{1,3})$/

/** An id that nothing has yet, counted on from another one: `case-12` gives `case-13`, `feed` gives `feed-2`. */
export function nextId(taken: ReadonlySet<string>, like: string): string {
  const [, stem = '', digits = ''] = idParts.exec(like) ?? []
  const short = (digits === '' ? `${like}-` : stem).slice(0, longestId - 5)
  for (let number = digits === '' ? 2 : Number(digits) + 1; ; number += 1) {
    const id = `${short}${String(number).padStart(digits.startsWith('0') ? digits.length : 0, '0')}`
    if (!taken.has(id)) return id
  }
}

/** The number of a new fastener: one more than the highest with the same letter, or the first that is free. */
export function nextNumber(taken: readonly string[], like: string): string {
  const letter = numberParts.exec(like)?.[1] ?? ''
  const used = taken.flatMap((number) => {
    const [, of, digits] = numberParts.exec(number) ?? []
    return of === letter ? [Number(digits)] : []
  })
  const next = Math.max(0, ...used) + 1
  if (next <= 999) return `${letter}${next}`
  const free = Array.from({ length: 999 }, (_, index) => index + 1).find((each) => !used.includes(each))
  return `${letter}${free ?? 999}`
}
