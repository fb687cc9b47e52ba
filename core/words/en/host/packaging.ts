import { fixed } from '../formats.ts'

/** What `npm run package` writes into the packages, and says on the terminal. */
export const packaging = {
  // In the packages
  copyright: 'Copyright © 2026 The Bedplate developers',
  /** macOS asks with it for the camera. */
  camera: 'Bedplate takes photos of a build where you press for one.',
  synopsis: 'Guides, checks and records the assembly of the bottom end of an engine',
  /** What an exported build is for the system. */
  fileKind: 'Bedplate build',
  fileDescription: 'A build of an engine with its record',
  specKind: 'Bedplate spec',
  specDescription: 'The spec of an engine, out of a library',
  worksOfOthers: `Bedplate contains the following works of others. Electron and Chromium have their licences beside the program,
in LICENSE.electron.txt and LICENSES.chromium.html.`,
  inWindow: 'In the window:',
  noLicenceText: 'Its package holds no text of it.',

  // On the terminal
  building: ({ targets }: { readonly targets: readonly string[] }) => `Building ${targets.join(' and ')} …`,
  noPublisher: ({ missing }: { readonly missing: readonly string[] }) =>
    `The packages name no publisher: set ${missing.join(' and ')} before you publish them.`,
  size: ({ files, megabytes }: { readonly files: number; readonly megabytes: number }) =>
    `The package holds ${files} files, ${fixed(megabytes, 1, 'MB')}, beside Electron.`,
  done: ({ folder }: { readonly folder: string }) => `The packages lie in ${folder}.`,
  failed: (facts: { readonly builder: string; readonly platform: 'linux' | 'win' | 'mac' }) =>
    `No package was made. It needs, by download: electron-builder ${facts.builder} from the npm registry; Electron from
github.com (or ELECTRON_MIRROR, or what \`npm start -- --fetch-electron\` has fetched already); and ${tools[facts.platform]} from
github.com/electron-userland (or ELECTRON_BUILDER_BINARIES_MIRROR). All is ready for it: run the line above where those can be had.`,
}

/** What electron-builder fetches beside Electron. */
const tools = {
  linux: 'fpm and the runtime of AppImage',
  win: 'NSIS',
  mac: 'the tools for disk images',
}
