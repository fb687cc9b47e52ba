const usage = `npm start                       open Bedplate
npm start -- FILE               open it with an exported build (.bedplate) or a spec
npm start -- --local            in a browser window, even where Electron is there
npm start -- --no-window        open nothing: print the address and serve until ended
npm start -- --data DIR         keep builds in DIR
npm start -- --specs DIR        take the engine specs in DIR
npm start -- --language de      speak German from now on; en is English, es is Spanish
npm start -- --shop ADDRESS     join the shop whose archive is at postgres://…
npm start -- --bench NAME       call this bench so among those of the shop
npm start -- --fetch-electron   try again to fetch Electron
npm start -- --doctor           say how the program and its record stand, and open nothing
npm start -- --help             print this`

/**
 * What is said before TypeScript runs and before anything is installed, in plain JavaScript for that. All other texts stand in
 * `core/words/en`.
 */
export const en = {
  usage,
  /** @param {{ option: string }} facts */
  optionUnknown: ({ option }) => `“${option}” is not an option of Bedplate. These are:\n${usage}`,
  /** @param {{ option: string, value: string }} facts */
  optionAlone: ({ option, value }) => `${option} takes nothing after it: leave out “=${value}”.`,
  /** @param {{ language: string }} facts */
  languageUnknown: ({ language }) =>
    `${language === '' ? 'After --language comes a language' : `Bedplate does not speak “${language}”`}: write en for English, de for German (Deutsch) or es for Spanish (Español).`,
  shopMissing:
    'After --shop comes the address of the shop’s archive, for example --shop postgres://bench@server/bedplate.',
  benchMissing: 'After --bench comes what this bench is called, for example --bench "Bench 2".',
  /** @param {{ option: string }} facts */
  folderMissing: ({ option }) => `After ${option} comes a folder, for example ${option} ./bench-2.`,

  /** @param {{ least: string, version: string }} facts */
  nodeTooOld: ({ least, version }) =>
    `Bedplate needs Node ${least} or newer here, and this is Node ${version}. Install a current one (nodejs.org) and start again.`,
  /** @param {{ version: string, least: string }} facts */
  noNode: ({ version, least }) =>
    `The Node that comes with the packages does not run here, and this one (${version}) is older than ${least}. Install a current one (nodejs.org) and start again.`,
  /** @param {{ message: string }} facts */
  nodeNotStarted: ({ message }) => `Node did not start: ${message}`,

  installing: 'Installing the packages that Bedplate needs (first start only) …',
  /** @param {{ seconds: number }} facts */
  stillInstalling: ({ seconds }) => `  … ${seconds} s`,
  /** @param {{ seconds: number }} facts */
  installed: ({ seconds }) => `Installed in ${seconds} s.`,
  installingFailed: 'Installing failed. Is the network there? Nothing else is needed to try again.',
  /** @param {{ message: string }} facts */
  npmNotStarted: ({ message }) => `npm did not start: ${message}`,
}

/** @typedef {typeof en} LauncherWords What the table of each language must have. */
