import type { PictureLine } from '../../core/contract/index.ts'
import type { PictureLook } from '../../core/drafts/index.ts'
import { checkKept } from '../../core/photo/index.ts'
import { done, refused } from '../../core/problem/index.ts'
import type { DraftPictures } from '../editor/draft/draft-pictures.ts'

/** Pictures under drawings that are kept nowhere. Nothing is verified, so that a number does for the hash. */
export class PicturesInMemory implements DraftPictures {
  /** No other window shows them. */
  follow() {
    return () => undefined
  }
  readonly #pictures = new Map<string, { readonly line: PictureLine; readonly base64: string }>()
  #count = 0

  list() {
    return Promise.resolve(done([...this.#pictures.values()].map(({ line }) => line)))
  }
  read(face: string) {
    const found = this.#pictures.get(face)
    return Promise.resolve(
      found === undefined ? refused('picture-damaged', {}, 'face') : done({ base64: found.base64 }),
    )
  }
  put(face: string, look: PictureLook, base64: string) {
    this.#count += 1
    const size = checkKept(Uint8Array.from(atob(base64), (character) => character.charCodeAt(0)))
    if (!size.ok) return Promise.resolve(size)
    const line = { face, sha256: String(this.#count), ...size.value, look }
    this.#pictures.set(face, { line, base64 })
    return Promise.resolve(done(line))
  }
  place(face: string, look: PictureLook) {
    const found = this.#pictures.get(face)
    if (found === undefined) return Promise.resolve(refused('picture-missing', {}, 'face'))
    const line = { ...found.line, look }
    this.#pictures.set(face, { ...found, line })
    return Promise.resolve(done(line))
  }
  remove(face: string) {
    this.#pictures.delete(face)
    return Promise.resolve(done({}))
  }
}
