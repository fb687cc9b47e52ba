import { problem, type Outcome, type Problem } from '../../core/problem/index.ts'
import type { NewPhoto } from '../bench/open-build.svelte.ts'
import { startCamera, stopCamera, type Cameras } from './camera.ts'
import { prepare, prepareFile, type OpenedPicture, type PreparedPhoto } from './prepare-photo.ts'

/** What the desk needs of the browser; tests give it their own. */
export interface PhotoTools {
  readonly cameras: Cameras | undefined
  readonly prepareFile: (name: string, file: Blob) => Promise<Outcome<PreparedPhoto>>
}

/** Brings one photo at a time to where it is wanted: from a file or the camera, looked at, then added. `Place` says where it goes. */
export class PhotoDesk<Place extends object = Omit<NewPhoto, 'base64'>> {
  readonly #add: (photo: Place & Pick<NewPhoto, 'base64'>, size: PreparedPhoto) => Promise<boolean>
  readonly #tools: PhotoTools
  #preparing = $state(false)
  #prepared = $state.raw<PreparedPhoto | null>(null)
  #camera = $state.raw<'starting' | MediaStream | null>(null)
  #problem = $state.raw<Problem | null>(null)
  /** Counts what was begun: what was left behind meanwhile is not taken up when it comes. */
  #turn = 0

  /** @param add Adds the photo; true once it is on disk. */
  constructor(
    add: (photo: Place & Pick<NewPhoto, 'base64'>, size: PreparedPhoto) => Promise<boolean>,
    tools: PhotoTools = ofBrowser(),
  ) {
    this.#add = add
    this.#tools = tools
  }

  get preparing() {
    return this.#preparing
  }
  /** A photo that waits to be added. */
  get prepared() {
    return this.#prepared
  }
  get camera() {
    return this.#camera
  }
  get problem() {
    return this.#problem
  }
  forgetProblem() {
    this.#problem = null
  }

  /** Takes the one picture that was chosen, let go of or pasted. Nothing of more than one, or while another waits. */
  async takeFiles(files: readonly { readonly name: string; readonly blob: Blob }[]): Promise<void> {
    const [file] = files
    if (file === undefined || this.#prepared !== null || this.#preparing) return
    if (files.length > 1) this.#problem = problem('photo-several', {})
    else await this.#prepare(this.#tools.prepareFile(file.name, file.blob))
  }

  /** Asks for the camera: only ever because a person pressed for it. */
  async openCamera(): Promise<void> {
    if (this.#camera !== null) return
    this.#problem = null
    this.#camera = 'starting'
    const turn = (this.#turn += 1)
    const started = await startCamera(this.#tools.cameras)
    if (turn !== this.#turn) {
      if (started.ok) stopCamera(started.value)
      return
    }
    this.#camera = started.ok ? started.value : null
    if (!started.ok) {
      this.#problem = started.problem
      return
    }
    for (const track of started.value.getVideoTracks())
      track.addEventListener('ended', () => {
        if (this.#camera !== started.value) return
        this.closeCamera()
        this.#problem = problem('camera-stopped', {})
      })
  }

  /** Takes what the camera shows, and lets go of it. */
  async snap(picture: OpenedPicture): Promise<void> {
    await this.#prepare(prepare(picture))
    this.closeCamera()
  }

  closeCamera(): void {
    const open = this.#camera
    this.#camera = null
    this.#turn += 1
    if (open !== null && open !== 'starting') stopCamera(open)
  }

  async add(place: Place): Promise<void> {
    const prepared = this.#prepared
    if (prepared === null) return
    const isAdded = await this.#add({ ...place, base64: base64Of(prepared.bytes) }, prepared)
    if (isAdded && this.#prepared === prepared) this.#prepared = null
  }

  cancel(): void {
    this.#prepared = null
  }

  async #prepare(preparing: Promise<Outcome<PreparedPhoto>>): Promise<void> {
    this.#problem = null
    this.#preparing = true
    const prepared = await preparing
    this.#preparing = false
    if (prepared.ok) this.#prepared = prepared.value
    else this.#problem = prepared.problem
  }
}

function ofBrowser(): PhotoTools {
  return { cameras: globalThis.navigator?.mediaDevices, prepareFile }
}

/** In pieces: a call cannot take a million arguments. */
function base64Of(bytes: Uint8Array): string {
  let text = ''
  for (let at = 0; at < bytes.length; at += 32_768)
    text += String.fromCharCode(...bytes.subarray(at, at + 32_768))
  return btoa(text)
}
