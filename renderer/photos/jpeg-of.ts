/** The bytes of a photo as they come from the host, as a picture that a page can show. */
export function jpegOf(base64: string): Blob {
  const text = atob(base64)
  return new Blob([Uint8Array.from(text, (character) => character.charCodeAt(0))], { type: 'image/jpeg' })
}
