import type { Client, PictureLine } from '../../../core/contract/index.ts'
import type { PictureLook } from '../../../core/drafts/index.ts'
import type { Outcome } from '../../../core/problem/index.ts'

/** The manual's pictures of a draft, one for each face at most. What is answered is on disk. */
export interface DraftPictures {
  list(): Promise<Outcome<readonly PictureLine[]>>
  read(face: string): Promise<Outcome<{ readonly base64: string }>>
  put(face: string, look: PictureLook, base64: string): Promise<Outcome<PictureLine>>
  place(face: string, look: PictureLook): Promise<Outcome<PictureLine>>
  remove(face: string): Promise<Outcome<unknown>>
  /** `listen` is called when another window has changed them, until what is given back is called. */
  follow(listen: () => unknown): () => void
}

/** The way to the other windows that show the draft. */
export interface OtherWindowsOfDraft {
  announce(): void
  follow(listen: () => unknown): () => void
}
const alone: OtherWindowsOfDraft = { announce: () => undefined, follow: () => () => undefined }

/** Those that the record keeps. */
export function picturesOf(client: Client, draft: string, others = alone): DraftPictures {
  async function announced<Value>(answer: Promise<Outcome<Value>>): Promise<Outcome<Value>> {
    const kept = await answer
    if (kept.ok) others.announce()
    return kept
  }
  return {
    list: () => client.request('pictures.list', { draft }),
    read: (face) => client.request('pictures.read', { draft, face }),
    put: (face, look, base64) => announced(client.request('pictures.put', { draft, face, look, base64 })),
    place: (face, look) => announced(client.request('pictures.place', { draft, face, look })),
    remove: (face) => announced(client.request('pictures.remove', { draft, face })),
    follow: (listen) => others.follow(listen),
  }
}
