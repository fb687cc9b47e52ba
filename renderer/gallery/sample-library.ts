import { families, readSpec } from '../../core/engine/index.ts'
import type { DraftLine, LibraryLine } from '../../core/contract/index.ts'
import { done } from '../../core/problem/index.ts'
import { engines } from './engines.ts'
import type { MemoryHandlers } from './memory-client.ts'

export const published: LibraryLine = {
  engine: 'heron-4',
  name: 'Heron 4 harbour crane',
  family: 'caps',
  cylinders: 4,
  revision: 2,
  revisionName: '2',
  demo: false,
  publishedBy: 'A. Ruiz',
  publishedAt: '2026-04-02T09:30:00.000Z',
  enteredBy: 'A. Ruiz',
  checkedBy: 'B. Lind',
  builds: 3,
}
const revisions: readonly LibraryLine[] = [
  published,
  {
    ...published,
    ...{
      revision: 1,
      revisionName: '1',
      checkedBy: null,
      builds: 1,
      publishedAt: '2026-03-02T07:30:00.000Z',
    },
  },
]

const draft: DraftLine = {
  id: '01956f6c-8a00-7000-8000-0000000000a1',
  engine: 'tern-2',
  revision: 1,
  name: 'Tern 2 bilge pump',
  family: 'split-horizontal',
  begunBy: 'A. Ruiz',
  begunAt: '2026-04-03T08:10:00.000Z',
  lastAt: '2026-04-03T09:30:00.000Z',
  state: 'open',
  edits: 14,
  faults: 2,
  doubts: 3,
  isChecked: false,
  entries: 17,
}
const drafts: readonly DraftLine[] = [
  draft,
  {
    ...draft,
    ...{ id: '01956f6c-8a00-7000-8000-0000000000a2', engine: 'heron-4', name: published.name, revision: 3 },
    ...{ faults: 0, doubts: 1, edits: 1, entries: 1 },
  },
]

const shipped = engines.map(({ text, spec }): LibraryLine => {
  const read = readSpec(text)
  const { family, cylinders } = read.ok ? read.spec.case : { family: families[0], cylinders: 1 }
  return {
    ...{ engine: spec.id, name: spec.name, family, cylinders, revision: 0, revisionName: spec.revision },
    ...{ demo: true, publishedBy: null, publishedAt: null, enteredBy: null, checkedBy: null, builds: 0 },
  }
})

/** A library with two revisions of one engine beside the demos, and two drafts. */
export const sampleLibrary: MemoryHandlers = {
  'library.list': () => done([published, ...shipped]),
  'library.revisions': ({ engine }) => done(engine === published.engine ? [...revisions] : []),
  'library.read': ({ revision }) => {
    const text = engines[0]!.text
    return done({ specText: revision === 1 ? text.replace('"84 mm"', '"83 mm"') : text })
  },
  'drafts.list': () => done([...drafts]),
}
