import { photosAt } from '../../core/builds/index.ts'
import { done } from '../../core/problem/index.ts'
import CameraView from '../photos/CameraView.svelte'
import PhotoForm from '../photos/PhotoForm.svelte'
import PhotoLarge from '../photos/PhotoLarge.svelte'
import PhotosOfStep from '../photos/PhotosOfStep.svelte'
import { PhotoDesk } from '../photos/photo-desk.svelte.ts'
import { benchAt, momentOf } from './at-bench.ts'
import { entriesOf, type Entry } from './entry.ts'
import { gearsBytes } from './sample-photos.ts'
import type { OnStage } from './shown.ts'

const part = entriesOf('Photos', 'panel')
const screen = entriesOf('Photos', 'screen')
const nothing = () => undefined
const step = 'gear-photo'

const at = (shown: OnStage, moment: string) => benchAt(shown, momentOf('holm-2', moment, step).build)

/** Two photos; the bytes of the second are gone. */
async function large(shown: OnStage, which: 0 | 1) {
  const there = await at(shown, 'photos taken')
  const photo = photosAt(there.openBuild.state, step)[which]!
  return { ...there, photo, name: photo.caption, onclose: nothing }
}

/** A desk whose camera sees a grey wall, and whose files are all of two gears. */
const playedDesk = () =>
  new PhotoDesk(() => Promise.resolve(true), {
    cameras: {
      getUserMedia: () => {
        const wall = Object.assign(document.createElement('canvas'), { width: 640, height: 480 })
        const context = wall.getContext('2d')!
        context.fillStyle = '#8a8a8a'
        context.fillRect(0, 0, 640, 480)
        return Promise.resolve(wall.captureStream(1))
      },
    },
    prepareFile: () => Promise.resolve(done({ bytes: gearsBytes(), widthPx: 320, heightPx: 240 })),
  })

export const photoEntries: readonly Entry[] = [
  part(
    'Photos and notes of a step',
    'What is there, and the ways to add one',
    PhotosOfStep,
    async (shown) => {
      const [asked, taken] = [
        await at(shown, 'photo to take'),
        momentOf('holm-2', 'photos taken', step).build,
      ]
      const build = taken.branch()
      const reason = 'A face can be seen'
      build.does({ type: 'withdraw-photo', entry: photosAt(build.state, step)[0]!.seq, reason })
      return {
        'asked for': { ...asked, step, asked: true },
        'one is lost': { ...(await benchAt(shown, taken.branch())), step },
        'one is withdrawn': { ...(await benchAt(shown, build)), step },
      }
    },
  ),
  screen('Photo, large', 'One that was taken', PhotoLarge, async (shown) => ({ all: await large(shown, 0) })),
  screen('Photo that is lost', 'Why there is none', PhotoLarge, async (shown) => ({
    all: await large(shown, 1),
  })),
  screen('Adding a photo', 'It is looked at before', PhotoForm, async (shown) => {
    const desk = playedDesk()
    await desk.takeFiles([{ name: 'gears.jpg', blob: new Blob() }])
    return {
      all: { ...(await at(shown, 'photo to take')), desk, photo: desk.prepared!, step, part: undefined },
    }
  }),
  screen('Camera', 'What it sees', CameraView, async () => {
    const desk = playedDesk()
    await desk.openCamera()
    return { all: { desk } }
  }),
]
