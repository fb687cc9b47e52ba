/** Texts in core and electron that look as if people read them and do not stand in the tables, with the reason. */
export interface Exemption {
  /** A file, or a folder with all that is in it. */
  readonly path: string
  readonly texts: RegExp
  readonly why: string
}

export const exemptions: readonly Exemption[] = [
  // What earlier versions wrote
  {
    path: 'core/tightening/run/answers.ts',
    texts: /^(Loosened|Turned on|The pass|Too much|The gap)/,
    why: 'sentences in entries of earlier versions, by which these are known',
  },

  // Signs and designations that are the same in every language
  {
    path: 'core/person/confusable-letters.ts',
    texts: /^\S+$/,
    why: 'letters that look alike (UTS 39)',
  },
  {
    path: 'core/practice/finished/half-way-sample.ts',
    texts: /^([A-Z] )+[A-Z]$/,
    why: 'marks as they are stamped',
  },
  { path: 'core/joint/property-class.ts', texts: /^SAE \d$/, why: 'grades of SAE J429' },
  {
    path: 'core/practice/order/order-consequence.ts',
    texts: /^mistaken$/,
    why: 'an id that no spec can have',
  },
  { path: 'core/drafts/forms/new-pass.ts', texts: /^instruction$/, why: 'the name of a field' },
  { path: 'core/engine/text.ts', texts: /^62 mm H6$/, why: 'an example of ISO 286' },
  { path: 'core/quantity/measure.ts', texts: /^\[/, why: 'a part of a regular expression' },

  // For the person who looks after the program, not for the one who works with it: lines of the log, and answers that only a bug gets
  {
    path: 'core/contract/problem-message.ts',
    texts: /that this version knows$/,
    why: 'a bug: the host never sends it',
  },
  { path: 'electron/desktop/ipc.ts', texts: /^it is not JSON$/, why: 'a bug: the window never sends it' },
  { path: 'electron/desktop/starting/give-up.ts', texts: /:$/, why: 'a line of the log' },
  { path: 'electron/desktop/window/page-watch.ts', texts: /^(The page|A process)/, why: 'lines of the log' },
  {
    path: 'electron/requests/open.ts',
    texts: /^(the record was|an empty record|started$|in the$|host, Node$)/,
    why: 'lines of the log',
  },
  { path: 'electron/requests/trace.ts', texts: /^something that/, why: 'a line of the log' },
  {
    path: 'electron/store/file/marker.ts',
    texts: /^Bedplate keeps a record/,
    why: 'a note in a file that only the program reads',
  },

  // What machines read
  {
    path: 'electron/store',
    texts:
      /\b(SELECT|INSERT|UPDATE|DELETE|CREATE|ALTER|DROP|AND|OR|WHERE|AS|ORDER BY) |^(AND|WHERE)$|^\w+ (=|>=|<|>) |\w+ =$/,
    why: 'SQL',
  },
  {
    path: 'electron/shop/postgres',
    texts: /./,
    why: 'SQL; what is said of it stands in the table of problems',
  },
  { path: 'electron', texts: /^SQLite format 3/, why: 'the first bytes of a database' },
  {
    path: 'electron/pages/headers.ts',
    texts: /^[a-z]+-[a-z]+ '|^camera=/,
    why: 'headers that keep a page in',
  },
  { path: 'electron', texts: /^(text|application)\/[a-z]+; charset=/, why: 'kinds of content' },
  {
    path: 'electron/local/server.ts',
    texts: /^(\d{3} [A-Z]|HTTP\/1\.1$|connection: |private, max-age=)/,
    why: 'lines of HTTP',
  },
  { path: 'electron/launch/redirect-page.ts', texts: /^moveTo|^\)<\/script>$/, why: 'script of a page' },
  { path: 'electron/launch/sandbox.ts', texts: /^abi <abi/, why: 'a profile of AppArmor' },
  { path: 'electron/launch/main.ts', texts: /^--data$/, why: 'an option' },
  { path: 'electron/packaging/main.ts', texts: /^npx$/, why: 'a command' },
  { path: 'electron/packaging/third-party.ts', texts: /^(Atkinson|\(OFL)/, why: 'a name and its licence' },
  {
    path: 'electron/packaging/configuration.ts',
    texts: /^(Editor|AppImage|Utility)$|@bedplate\.invalid/,
    why: 'words of electron-builder, and a placeholder',
  },
  { path: 'electron/desktop/guards.ts', texts: /^deny$/, why: 'a word of Electron' },
  { path: 'electron/desktop/window/menus.ts', texts: /^CommandOrControl/, why: 'a word of Electron' },
  { path: 'electron/desktop/starting/sign.ts', texts: /^refused:$/, why: 'what the launcher looks for' },
  {
    path: 'electron',
    texts: /^(AppData|Library|Google|Microsoft|\/?Applications|Chromium|SingletonLock|Bedplate\/windows)/,
    why: 'names of files and programs',
  },
]
