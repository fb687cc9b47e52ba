import { words } from '../../launch/spoken.ts'

const { saving } = words.desktop

/** Names that Windows keeps for devices, with whatever ending: a file of such a name cannot be made or opened again. */
const device = /^(con|prn|aux|nul|conin\$|conout\$|(com|lpt)[0-9\u00b9\u00b2\u00b3])\s*(\.|$)/i

const mostCharacters = 120

/** A name as it can stand on any disk: no signs that separate or hide, no device's name, not too long. */
export function plainFileName(typed: string): string {
  const signs = typed
    .toWellFormed()
    .replace(/[\p{Cc}\p{Cf}\u2028\u2029\ufffd<>:"/\\|?*]/gu, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[. ]+/, '')
  const plain = [...signs]
    .slice(0, mostCharacters)
    .join('')
    .replace(/[. ]+$/, '')
  if (plain === '') return saving.nameless
  return device.test(plain) ? saving.notDevice({ name: plain }) : plain
}
