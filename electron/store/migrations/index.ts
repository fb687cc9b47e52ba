import { record } from './0001-record.ts'
import { archive } from './0002-archive.ts'
import { search } from './0003-search.ts'
import { guards } from './0004-guards.ts'
import { standings } from './0005-standings.ts'
import { practice } from './0006-practice.ts'
import { photos } from './0007-photos.ts'
import { library } from './0008-library.ts'
import { shop } from './0009-shop.ts'
import { pictures } from './0010-pictures.ts'
import { commonLists } from './0011-common-lists.ts'
import { searchInLanguages } from './0012-search-in-languages.ts'

/** One step of the record's schema: `sql` takes a file of the version before to `version`. */
export interface Migration {
  readonly version: number
  readonly sql: string
}

/** In order, without a gap. A migration that has ever been released is never edited: a new one is added. */
export const migrations: readonly Migration[] = [
  record,
  archive,
  search,
  guards,
  standings,
  practice,
  photos,
  library,
  shop,
  pictures,
  commonLists,
  searchInLanguages,
]
