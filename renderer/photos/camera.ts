import { done, refused, type Outcome } from '../../core/problem/index.ts'

/** What of the browser's media devices a camera takes. */
export type Cameras = Pick<MediaDevices, 'getUserMedia'>

/** The picture alone, never a sound; the camera at the back where there are two. */
const wanted: MediaStreamConstraints = {
  audio: false,
  video: { facingMode: { ideal: 'environment' }, width: { ideal: 1920 }, height: { ideal: 1440 } },
}

/**
 * Starts the camera; the browser asks whether it may. Refuses `camera-refused`, `camera-none` and `camera-in-use`, by the names
 * of the errors in W3C's Media Capture and Streams, section 10.
 */
export async function startCamera(cameras: Cameras | undefined): Promise<Outcome<MediaStream>> {
  if (cameras === undefined) return refused('camera-none', {})
  try {
    return done(await cameras.getUserMedia(wanted))
  } catch (error) {
    switch (error instanceof Error ? error.name : '') {
      case 'NotAllowedError':
      case 'SecurityError':
        return refused('camera-refused', {})
      case 'NotFoundError':
      case 'OverconstrainedError':
        return refused('camera-none', {})
      default:
        return refused('camera-in-use', {})
    }
  }
}

/** Lets go of the camera: its light goes out. */
export function stopCamera(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop()
}
