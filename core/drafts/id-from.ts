const longestId = 40

/** An id made of a name, which is none of those that are taken. */
export function idFrom(name: string, taken: ReadonlySet<string>): string {
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, longestId - 4)
    .replace(/^-+|-+$/g, '')
  const first = plain === '' || plain in {} ? `engine-${plain}`.replace(/-$/, '') : plain
  let id = first
  for (let more = 2; taken.has(id); more += 1) id = `${first}-${more}`
  return id
}
