import type { PictureLine } from '../../core/contract/index.ts'
import { pictureLook } from '../../core/drafts/index.ts'
import { checkKept } from '../../core/photo/index.ts'
import { done, refused, type Outcome } from '../../core/problem/index.ts'
import { photoHash } from '../store/index.ts'
import type { Store } from '../store/index.ts'
import type { HandlersOf } from './handlers.ts'

/** Answers about the manual's pictures under the drawings of drafts. */
export function pictureRequests(store: Store): HandlersOf<'pictures'> {
  /** Those whose look this version can read. */
  const linesOf = (draft: string): readonly PictureLine[] =>
    store.pictures.of(draft).flatMap(({ face, sha256, width_px, height_px, look_json }) => {
      const look = pictureLook.safeParse(jsonIn(look_json))
      return look.success ? [{ face, sha256, widthPx: width_px, heightPx: height_px, look: look.data }] : []
    })
  const lineOf = (draft: string, face: string): Outcome<PictureLine> => {
    const line = linesOf(draft).find((each) => each.face === face)
    return line === undefined ? refused('picture-missing', {}, 'face') : done(line)
  }
  return {
    'pictures.list': ({ draft }) => done([...linesOf(draft)]),

    'pictures.read': ({ draft, face }) => {
      const line = lineOf(draft, face)
      if (!line.ok) return line
      const bytes = store.pictures.bytes(draft, face)
      if (bytes === null || photoHash(bytes) !== line.value.sha256)
        return refused('picture-damaged', {}, 'face')
      return done({ base64: bytes.toString('base64') })
    },

    'pictures.put': ({ draft, face, look, base64 }) => {
      if (store.drafts.one(draft) === null) return refused('draft-unknown', {}, 'draft')
      const bytes = Buffer.from(base64, 'base64')
      const size = checkKept(bytes)
      if (!size.ok) return size
      const kept = store.pictures.put(draft, {
        ...{ face, sha256: photoHash(bytes), look_json: JSON.stringify(look), bytes },
        ...{ width_px: size.value.widthPx, height_px: size.value.heightPx },
      })
      return kept.ok ? lineOf(draft, face) : kept
    },

    'pictures.place': ({ draft, face, look }) => {
      const kept = store.pictures.place(draft, face, JSON.stringify(look))
      return kept.ok ? lineOf(draft, face) : kept
    },

    'pictures.remove': ({ draft, face }) => {
      const removed = store.pictures.remove(draft, face)
      return removed.ok ? done({}) : removed
    },
  }
}

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text) as unknown
  } catch {
    return null
  }
}
