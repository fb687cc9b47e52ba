import { counted } from '../formats.ts'

export interface Since {
  /** Day and time; null where it is not known. */
  readonly since: string | null
}

export interface OwnLine {
  /** The bench whose line is in this record; null for this one. */
  readonly own: string | null
}

/** The page 'Shop': the benches that share an archive, and what goes on at each. */
export const shop = {
  title: 'Shop',
  thisBench: 'What this bench is called',
  keepName: 'Save the name',
  /** This bench, in a list of benches. */
  thisOne: 'this bench',
  bench: 'Bench',
  lastSeen: 'Last seen',
  program: 'Program',
  asOf: 'As of',
  standing: 'Between this bench and the shop',
  connection: {
    untried: (_: Since) => 'Not connected yet.',
    open: ({ since }: Since) => `Connected${since === null ? '.' : ` since ${since}.`}`,
    cut: ({ since }: Since) => `Not connected${since === null ? '.' : ` since ${since}.`}`,
  },
  notReached: ({ since }: Since) => `Not connected${since === null ? '.' : ` since ${since}.`}`,
  onlyHere:
    'Listed is what this bench has: its own builds, and those of other benches as they came here last.',
  waiting: ({ entries, builds }: { readonly entries: number; readonly builds: number }) =>
    entries === 0
      ? 'Nothing waits: all that was confirmed here is in the archive.'
      : `${counted(entries, 'entry', 'entries')} of ${counted(builds, 'build', 'builds')} not in the archive yet. All is kept here, and is sent by itself.`,
  refused: 'Builds that were refused',
  benches: 'Benches of the shop',
  builds: 'Builds of the shop',
  find: 'Name, serial number, engine, person, part',
  findIt: 'Find',
  leave: 'Leave the shop',
  isForked: 'continued apart at two benches',

  /** Whether all benches have people and wrenches in common. */
  lists: {
    title: 'People and wrenches',
    people: {
      common: 'People: one list for all benches. What is changed here holds at every bench.',
      own: 'People: this bench has its own list.',
    },
    wrenches: {
      common: 'Wrenches: one list for all benches. What is changed here holds at every bench.',
      own: 'Wrenches: this bench has its own list.',
    },
    chosen: 'The owner of the archive chooses, with “npm run shop -- lists”.',
  },

  join: {
    title: 'Join a shop',
    what: 'The benches of a shop share an archive in PostgreSQL. This bench keeps its own record as before and works on with the network down; what is confirmed here goes to the archive by itself.',
    address: 'Address of the archive',
    example: 'postgres://bench@server/bedplate',
    password: 'Password, if the archive asks for one',
    authority: 'File of the authority that issued the server’s certificate, if it is one of your own',
    kept: {
      'key-store': 'The password is kept in this system’s key store, and is never shown.',
      file: 'The password is kept in a file that only this user may read, as there is no key store to be used here, and is never shown.',
      environment:
        'The password comes from the environment (PGPASSWORD), which goes before one that is typed here.',
    },
    join: 'Join',
  },

  apart: {
    title: 'Continued apart at two benches',
    line: (facts: {
      readonly number: string
      readonly name: string
      readonly entry: number
      readonly bench: string
      /** The bench whose line is here; null for this one. */
      readonly own: string | null
      readonly counts: 'here' | 'there' | null
    }) =>
      `${facts.number} ${facts.name}: ${facts.own === null ? 'here' : `at ${facts.own}`} and at ${facts.bench} from entry ${facts.entry} on. ` +
      (facts.counts === null
        ? 'Nobody has settled which counts.'
        : facts.counts === 'here'
          ? `What was recorded ${facts.own === null ? 'here' : `at ${facts.own}`} counts.`
          : `What was recorded at ${facts.bench} counts.`),
    look: 'Look at both lines',
    own: ({ own }: OwnLine) => own ?? 'This bench',
    which: 'Which line counts?',
    hereCounts: ({ own }: OwnLine) => `What was recorded ${own === null ? 'here' : `at ${own}`} counts`,
    thereCounts: ({ bench }: { readonly bench: string }) => `What was recorded at ${bench} counts`,
    entries: 'Entries since they parted',
    entry: 'Entry',
    onTheSheet: 'Where the two sheets differ',
  },

  /** In the window of a build. */
  build: {
    title: 'Benches',
    asOf: ({ at }: { readonly at: string }) => `As of ${at}.`,
    handOver: 'Hand over …',
    toWhich: 'Which bench goes on?',
    note: 'What it should know (may be empty)',
    doHandOver: ({ bench }: { readonly bench: string }) => `Hand over to ${bench}`,
    handedOver: ({ bench, note }: { readonly bench: string; readonly note: string }) =>
      `Handed over by ${bench}${note === '' ? '.' : `: ${note}`}`,
    noOther: 'No other bench has joined the shop yet.',
    takeOver: 'Take over at this bench',
    whyTakeOver: 'Why is it taken over? The bench that has it stops when it hears of it.',
    doTakeOver: 'Take over',
    whySettle: 'Why does this line count? The other one is kept and not continued.',
  },

  wall: {
    title: 'Wall view',
    open: 'Wall view',
    none: 'No build of the shop is open.',
    step: ({ place, of }: { readonly place: number; readonly of: number }) => `${place}/${of}`,
    noStep: 'done',
    next: ({ fastener, pass }: { readonly fastener: string | null; readonly pass: number }) =>
      fastener === null ? `pass ${pass}` : `next ${fastener}`,
    problems: ({ openProblems }: { readonly openProblems: number }) =>
      counted(openProblems, 'problem', 'problems'),
    awaitsSecond: 'second person',
    /** Two benches went on apart. */
    forked: 'two lines',
    paused: 'paused',
  },
}
