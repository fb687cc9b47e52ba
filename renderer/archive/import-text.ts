import type { ImportResult } from '../../core/contract/index.ts'
import type { Words } from '../../core/words/index.ts'

/** What became of a file that was imported. */
export function importText(words: Words, outcome: ImportResult): string {
  const photosLost = 'photosLost' in outcome ? (outcome.photosLost ?? 0) : 0
  const became = becameText(words, outcome)
  return photosLost === 0 ? became : `${became} ${words.archive.import.photosLost({ photosLost })}`
}

function becameText(words: Words, outcome: ImportResult): string {
  const { line } = outcome
  switch (outcome.kind) {
    case 'added':
      return words.archive.import.added(line)
    case 'known':
      return words.archive.import.known(line)
    case 'continued':
      return words.archive.import.continued({ ...line, added: outcome.added })
    case 'older':
      return words.archive.import.behind({ ...line, behind: outcome.behind })
    case 'fork':
      return words.archive.import.fork({ ...line, at: outcome.at })
    default:
      return outcome satisfies never
  }
}
