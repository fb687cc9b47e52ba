import type { Client, PictureLine } from '../../core/contract/index.ts'
import type { PictureLook } from '../../core/drafts/index.ts'
import type { Outcome } from '../../core/problem/index.ts'

/** The manual's pictures of a draft, one for each face at most. What is answered is on disk. */
export interface DraftPictures {
  list(): Promise<Outcome<readonly PictureLine[]>>
  read(face: string): Promise<Outcome<{ readonly base64: string }>>
  put(face: string, look: PictureLook, base64: string): Promise<Outcome<PictureLine>>
  place(face: string, look: PictureLook): Promise<Outcome<PictureLine>>
  remove(face: string): Promise<Outcome<unknown>>
}

/** Those that the record keeps. */
export function picturesOf(client: Client, draft: string): DraftPictures {
  return {
    list: () => client.request('pictures.list', { draft }),
    read: (face) => client.request('pictures.read', { draft, face }),
    put: (face, look, base64) => client.request('pictures.put', { draft, face, look, base64 }),
    place: (face, look) => client.request('pictures.place', { draft, face, look }),
    remove: (face) => client.request('pictures.remove', { draft, face }),
  }
}
