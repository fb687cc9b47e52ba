/** Hands a text to the person as a file, the way a browser saves a download. */
export function saveFile(fileName: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/octet-stream' }))
  const link = document.createElement('a')
  link.href = address
  link.download = fileName
  link.click()
  URL.revokeObjectURL(address)
}
