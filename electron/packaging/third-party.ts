import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { en } from '../../core/words/index.ts'

/** Shipped as files of the window, which the bundler does not count among the scripts that it lists. */
const fonts = 'node_modules/@fontsource/atkinson-hyperlegible-next'
/** Has the letters that the fonts above lack. */
const fontInAssets = { name: 'Atkinson Hyperlegible', licence: 'assets/fonts/LICENSE' }

/**
 * The licences of all that is shipped and not ours: the packages in the package, what the window's scripts were made of (as
 * the bundler lists it), and the fonts. Electron and Chromium bring theirs along in files of their own.
 */
export function thirdParty(root: string, packedFiles: readonly string[]): string {
  const folders = new Set(
    packedFiles.flatMap((file) => /^node_modules\/(?:@[^/]+\/)?[^/]+/.exec(file)?.[0] ?? []),
  )
  return [
    `${en.packaging.worksOfOthers}\n`,
    ...[...folders, fonts].map((folder) => licenceOf(root, join(root, folder))),
    `${fontInAssets.name} (OFL-1.1)\n\n${readFileSync(join(root, fontInAssets.licence), 'utf8').trim()}\n`,
    `${en.packaging.inWindow}\n`,
    readFileSync(join(root, 'dist/renderer/licences.md'), 'utf8'),
  ].join('\n')
}

/** The text lies in the package; where it does not, that of the licence that the package names, by its SPDX identifier. */
function licenceOf(root: string, folder: string): string {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as Record<
    string,
    string
  >
  const own = readdirSync(folder).find((each) => /^licen[cs]e(\.|$)/i.test(each))
  const file = own === undefined ? join(root, 'assets/licences', `${license}.txt`) : join(folder, own)
  const text = existsSync(file) ? readFileSync(file, 'utf8').trim() : en.packaging.noLicenceText
  return `${name} ${version} (${license})\n\n${text}\n`
}
