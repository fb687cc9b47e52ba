import { describe, expect, it } from 'vitest'
import { sentenceOf } from '../../../core/problem/index.ts'
import { mostPhotoBytes, mostPhotoSidePx } from '../../../core/photo/index.ts'
import type { NewPhoto } from '../../../renderer/bench/open-build.svelte.ts'
import { PhotoDesk } from '../../../renderer/photos/photo-desk.svelte.ts'
import { prepare, prepareFile, type OpenedPicture } from '../../../renderer/photos/prepare-photo.ts'
import { jpegOf, pictureFile } from '../../photos/files.ts'

const bytesOf = (bytes: Uint8Array) => new Uint8Array(bytes)

/** A picture that a coder makes into so many bytes at full quality and size. */
function picture(widthPx: number, heightPx: number, bytesAtFull = 1000) {
  const asked: (readonly [number, number, number])[] = []
  const opened: OpenedPicture = {
    ...{ widthPx, heightPx, close: () => undefined },
    encode(width, height, quality) {
      asked.push([width, height, quality])
      const wanted = Math.round(bytesAtFull * quality * ((width * height) / (widthPx * heightPx)))
      return Promise.resolve(
        bytesOf(jpegOf({ widthPx: width, heightPx: height, filler: '.'.repeat(wanted) })),
      )
    },
  }
  return { opened, asked }
}

/** A file whose bytes nobody may ask for beyond its beginning. */
function file(bytes: Uint8Array, size = bytes.length): Blob {
  const blob = new Blob([bytesOf(bytes)])
  const read = { slice: (from: number, to: number) => blob.slice(from, to), size }
  return read as unknown as Blob
}

const allow = { getUserMedia: () => Promise.resolve(stream()) }
const denied = (name: string) => ({
  getUserMedia: () => Promise.reject(Object.assign(new Error(), { name })),
})

function stream() {
  const heard: (() => void)[] = []
  const track = {
    stopped: 0,
    stop: () => void (track.stopped += 1),
    addEventListener: (_: string, hear: () => void) => void heard.push(hear),
    ends: () => heard.forEach((hear) => hear()),
  }
  return { getTracks: () => [track], getVideoTracks: () => [track], track } as unknown as MediaStream & {
    track: typeof track
  }
}

function desk(cameras: Pick<MediaDevices, 'getUserMedia'> | undefined = allow) {
  const added: NewPhoto[] = []
  let accepts = true
  const made = new PhotoDesk(
    (photo) => {
      if (accepts) added.push(photo)
      return Promise.resolve(accepts)
    },
    {
      cameras,
      prepareFile: (name, blob) => prepareFile(name, blob, () => Promise.resolve(picture(800, 600).opened)),
    },
  )
  return { desk: made, added, refuses: () => void (accepts = false) }
}

const jpeg = { name: 'crank.jpg', blob: file(pictureFile('gears.jpg')) }

describe('a photo that is prepared', () => {
  it('is no larger than it is kept, its sides as they were to each other', async () => {
    const { opened } = picture(4000, 3000)
    expect(await prepare(opened)).toMatchObject({
      ok: true,
      value: { widthPx: mostPhotoSidePx, heightPx: 1200 },
    })
    expect(await prepare(picture(30, 4000).opened)).toMatchObject({ value: { widthPx: 12, heightPx: 1600 } })
  })

  it('that is small stays as large as it is', async () => {
    expect(await prepare(picture(320, 240).opened)).toMatchObject({ value: { widthPx: 320, heightPx: 240 } })
  })

  it('loses quality, and then size, until it takes no more than it may', async () => {
    const { opened, asked } = picture(1600, 1200, 3 * mostPhotoBytes)
    const prepared = await prepare(opened)
    expect(prepared.ok && prepared.value.bytes.length <= mostPhotoBytes).toBe(true)
    expect(asked.map(([width]) => width)).toEqual([1600, 1600, 1600, 1600, 1120, 1120, 1120])
  })

  it('of 200 MB is refused without a look at more than its beginning', async () => {
    const opens: unknown[] = []
    const large = file(jpegOf(), 200_000_000)
    const prepared = await prepareFile(
      'panorama.jpg',
      large,
      (blob) => (opens.push(blob), Promise.reject(new Error())),
    )
    expect(prepared).toMatchObject({ ok: false, problem: { code: 'photo-too-large' } })
    expect(opens).toEqual([])
  })

  it('that begins like a picture and is none is refused', async () => {
    const prepared = await prepareFile('crank.jpg', file(jpegOf()), () =>
      Promise.reject(new Error('no image')),
    )
    expect(prepared).toMatchObject({ problem: { code: 'photo-damaged-file', facts: { name: 'crank.jpg' } } })
  })
})

describe('the photo desk', () => {
  it('takes one file, and adds it once it was looked at', async () => {
    const { desk: here, added } = desk()
    await here.takeFiles([jpeg])
    expect([here.prepared?.widthPx, added.length]).toEqual([800, 0])
    await here.add({ step: 'gear-photo', caption: 'Lines meet', part: null })
    expect(added).toMatchObject([
      { step: 'gear-photo', caption: 'Lines meet', base64: expect.stringMatching(/^\/9j\//) },
    ])
    expect(here.prepared).toBeNull()
  })

  it('keeps a photo that the host refused, to be added again', async () => {
    const { desk: here, refuses } = desk()
    await here.takeFiles([jpeg])
    refuses()
    await here.add({ step: 'gear-photo', caption: '', part: null })
    expect(here.prepared).not.toBeNull()
  })

  it('refuses several at once, and what is no picture, and goes on', async () => {
    const { desk: here } = desk()
    await here.takeFiles([jpeg, jpeg])
    expect(here.problem?.code).toBe('photo-several')
    await here.takeFiles([{ name: 'list.csv', blob: file(new Uint8Array(Buffer.from('a,b'))) }])
    expect(here.problem?.code).toBe('photo-no-picture')
    await here.takeFiles([jpeg])
    expect([here.problem, here.prepared === null]).toEqual([null, false])
  })

  it('takes nothing where nothing was chosen, or while a photo waits', async () => {
    const { desk: here } = desk()
    await here.takeFiles([])
    expect(here.prepared).toBeNull()
    await here.takeFiles([jpeg])
    const waits = here.prepared
    await here.takeFiles([jpeg])
    expect(here.prepared).toBe(waits)
  })
})

describe('the camera', () => {
  it('is not asked for until somebody presses, and then for its picture alone', async () => {
    const asked: unknown[] = []
    const { desk: here } = desk({ getUserMedia: (wanted) => (asked.push(wanted), Promise.resolve(stream())) })
    await here.takeFiles([jpeg])
    expect(asked).toEqual([])
    await here.openCamera()
    expect(asked).toMatchObject([{ audio: false, video: {} }])
  })

  it.each([
    ['refused', denied('NotAllowedError'), 'camera-refused'],
    ['not there', denied('NotFoundError'), 'camera-none'],
    ['used by another program', denied('NotReadableError'), 'camera-in-use'],
    ['not known to the browser', undefined, 'camera-none'],
  ])('that is %s is said', async (_, cameras, code) => {
    const made = new PhotoDesk(() => Promise.resolve(true), {
      cameras,
      prepareFile: () => Promise.reject(new Error('nothing is prepared')),
    })
    await made.openCamera()
    expect([made.problem?.code, made.camera]).toEqual([code, null])
  })

  it('is let go of when the photo is taken, when it is closed, and when it comes too late', async () => {
    const streams: ReturnType<typeof stream>[] = []
    const cameras = {
      getUserMedia: () => {
        streams.push(stream())
        return Promise.resolve(streams.at(-1)!)
      },
    }
    const { desk: here } = desk(cameras)
    await here.openCamera()
    await here.snap(picture(1920, 1440).opened)
    expect([here.prepared?.widthPx, here.camera]).toEqual([1600, null])
    await here.openCamera()
    here.closeCamera()
    const opening = here.openCamera()
    here.closeCamera()
    await opening
    expect(streams.map(({ track }) => track.stopped)).toEqual([1, 1, 1])
    expect(here.camera).toBeNull()
  })

  it('that is unplugged is said', async () => {
    const held = stream()
    const { desk: here } = desk({ getUserMedia: () => Promise.resolve(held) })
    await here.openCamera()
    held.track.ends()
    expect([here.camera, here.problem?.code]).toEqual([null, 'camera-stopped'])
  })

  describe.each([
    ['camera-refused', 'NotAllowedError', 'Allow it for this page', 'take the photo with another device'],
    ['camera-none', 'NotFoundError', 'Connect one', 'take the photo with another device'],
    ['camera-in-use', 'NotReadableError', 'Close that', 'add the photo as a file'],
    ['camera-stopped', null, 'Look at its cable', 'add the photo as a file'],
  ])('that is lost as %s: its advice, followed to the letter', (code, refusal, first, otherwise) => {
    /** A desk that has just said so; from then on the camera can be had. */
    async function told() {
      const held = stream()
      let isMended = refusal === null
      const lost = () => Promise.reject(Object.assign(new Error(), { name: refusal }))
      const { desk: here, added } = desk({
        getUserMedia: () => (isMended ? Promise.resolve(held) : lost()),
      })
      await here.openCamera()
      if (refusal === null) held.track.ends()
      isMended = true
      expect(sentenceOf(here.problem!)).toContain(first)
      expect(sentenceOf(here.problem!)).toContain(otherwise)
      return { here, added, held }
    }

    it('“then press again” takes the photo by the camera', async () => {
      const { here, added, held } = await told()
      expect([here.problem?.code, here.camera]).toEqual([code, null])
      await here.openCamera()
      expect([here.problem, here.camera]).toEqual([null, held])
      await here.snap(picture(640, 480).opened)
      await here.add({ step: 'gear-photo', caption: '', part: null })
      expect(added).toHaveLength(1)
    })

    it('“as a file” takes it from one', async () => {
      const { here, added } = await told()
      await here.takeFiles([jpeg])
      await here.add({ step: 'gear-photo', caption: '', part: null })
      expect([here.problem, added.length]).toEqual([null, 1])
    })
  })
})
