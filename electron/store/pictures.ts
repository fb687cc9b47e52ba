import { done, type Outcome } from '../../core/problem/index.ts'
import type { Database, Write } from './file/sqlite.ts'

/** The picture under a face of a draft, without its bytes. */
export interface PictureRow {
  readonly face: string
  readonly sha256: string
  readonly width_px: number
  readonly height_px: number
  readonly look_json: string
}

/** The manual's pictures under the drawings of drafts: one for each face, in place of the one before. */
export function picturesOn(db: Database, write: Write) {
  const of = db.prepare<[string], PictureRow>(
    'SELECT face, sha256, width_px, height_px, look_json FROM draft_picture WHERE draft = ? ORDER BY face',
  )
  const bytes = db
    .prepare<[string, string], Buffer>('SELECT bytes FROM draft_picture WHERE draft = ? AND face = ?')
    .pluck()
  const put = db.prepare(`
    INSERT OR REPLACE INTO draft_picture (draft, face, sha256, width_px, height_px, look_json, bytes)
    VALUES (@draft, @face, @sha256, @width_px, @height_px, @look_json, @bytes)`)
  const place = db.prepare('UPDATE draft_picture SET look_json = ? WHERE draft = ? AND face = ?')
  const remove = db.prepare('DELETE FROM draft_picture WHERE draft = ? AND face = ?')
  const removeAll = db.prepare('DELETE FROM draft_picture WHERE draft = ?')
  const kept = (work: () => void): Outcome<null> =>
    write(() => {
      work()
      return done(null)
    })
  return {
    of: (draft: string): readonly PictureRow[] => of.all(draft),
    bytes: (draft: string, face: string): Buffer | null => bytes.get(draft, face) ?? null,
    put: (draft: string, row: PictureRow & { readonly bytes: Buffer }): Outcome<null> =>
      kept(() => put.run({ draft, ...row })),
    place: (draft: string, face: string, look_json: string): Outcome<null> =>
      kept(() => place.run(look_json, draft, face)),
    remove: (draft: string, face: string): Outcome<null> => kept(() => remove.run(draft, face)),
    removeAll: (draft: string): Outcome<null> => kept(() => removeAll.run(draft)),
  }
}

export type Pictures = ReturnType<typeof picturesOn>
