import { readFile, readdir } from 'node:fs/promises'
import { join } from 'node:path'

const folder = join(import.meta.dirname, '../specs')

/** Every text in the files of the demo engines. */
export async function textsOfSpecs(): Promise<ReadonlySet<string>> {
  const files = (await readdir(folder)).filter((name) => name.endsWith('.json'))
  const texts = new Set<string>()
  const take = (value: unknown): void => {
    if (typeof value === 'string') texts.add(value)
    else if (typeof value === 'object' && value !== null) Object.values(value).forEach(take)
  }
  for (const file of files) take(JSON.parse(await readFile(join(folder, file), 'utf8')))
  return texts
}
