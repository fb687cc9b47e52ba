import type { ImportResult } from '../../core/contract/index.ts'
import { counted } from '../parts/counted.ts'

/** What became of a file that was imported, in one sentence. */
export function importText(outcome: ImportResult): string {
  const { number, name, entries } = outcome.line
  const build = `${number} “${name}”`
  switch (outcome.kind) {
    case 'added':
      return `Imported as ${build}: ${counted(entries, 'entry', 'entries')}, each as it was confirmed.`
    case 'known':
      return `${build} is here already, entry for entry. Nothing was changed.`
    case 'continued':
      return `${build} was continued elsewhere: ${counted(outcome.added, 'more entry is', 'more entries are')} here now, ${entries} in all.`
    case 'older':
      return `${build} has ${counted(outcome.behind, 'more entry', 'more entries')} here than in the file. Nothing was changed.`
    case 'fork':
      return `${build} went two ways: from entry ${outcome.at} on, the file is not what is recorded here. Nothing was changed.`
    default:
      return outcome satisfies never
  }
}
