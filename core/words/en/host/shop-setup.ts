import { counted, fixed, plain } from '../formats.ts'

export interface Role {
  readonly kind: 'bench' | 'reader'
  readonly address: string
  readonly password: string
}

export interface Status {
  readonly shop: string
  readonly server: string
  readonly version: number
  readonly builds: number
  readonly entries: number
  readonly photos: number
  readonly forks: number
  readonly benches: readonly { readonly name: string; readonly program: string; readonly seenAtUtc: string }[]
  readonly tables: readonly { readonly table: string; readonly bytes: number }[]
}

/** Whether all benches have a list in common. */
export interface CommonLists {
  readonly shop: string
  readonly people: boolean
  readonly wrenches: boolean
}

export interface Rebuilt {
  readonly shop: string
  readonly builds: number
  readonly changed: number
  readonly unread: number
}

/** What `npm run shop` prints: setting up the archive that the benches of a shop share. */
export const shopSetup = {
  usage: `npm run shop -- COMMAND ADDRESS   set up the archive that the benches of a shop share, in PostgreSQL

  init      make the roles, the schema and the tables, and print what each bench needs; once more with a larger
            number, the logins that are missing are added
              --benches N   how many benches get a login (1)
  migrate   bring the tables to the version of this program
  status    say what is in it and how much room it takes
  lists     say whether people and wrenches are one list for all benches, or each bench has its own; choose it
              --people one|own    --wrenches one|own
  rebuild   make the list of builds, and the words they are found by, again from the entries; benches work on meanwhile

The address is the owner’s, as postgres://owner@server/database, with ?shop=NAME where one database has several shops and
?sslrootcert=FILE for the authority that issued the server’s certificate. The password may stand in PGPASSWORD.`,
  ready: ({
    shop,
    database,
    roles,
  }: {
    readonly shop: string
    readonly database: string
    readonly roles: readonly Role[]
  }) =>
    [
      `The archive of the shop “${shop}” is ready in the database “${database}”.`,
      ...(roles.length === 0
        ? [
            'All logins are there already. Their passwords are kept by nobody: to have new ones, remove the role first (DROP ROLE).',
          ]
        : ['These passwords are printed once and kept nowhere. Give each bench its own:']),
      ...roles.map(
        ({ kind, address, password }) =>
          `\n  ${kind === 'bench' ? 'A bench' : 'To read only'}\n    address   ${address}\n    password  ${password}`,
      ),
    ].join('\n'),
  lists: ({ shop, people, wrenches }: CommonLists) =>
    [
      `In the shop “${shop}”`,
      people ? '  people are one list for all benches' : '  each bench has its own list of people',
      wrenches ? '  wrenches are one list for all benches' : '  each bench has its own list of wrenches',
    ].join('\n'),
  rebuilt: ({ shop, builds, changed, unread }: Rebuilt) =>
    [
      `The list of the shop “${shop}” was made again from the entries of ${counted(builds, 'build', 'builds')}.`,
      changed === 0
        ? '  it was as the entries say'
        : `  ${counted(changed, 'build was', 'builds were')} listed otherwise than the entries say, and put right`,
      ...(unread === 0
        ? []
        : [
            `  ${counted(unread, 'build', 'builds')} left as listed: this program cannot read the entries or the spec`,
          ]),
    ].join('\n'),
  migrated: ({ shop, from, to }: { readonly shop: string; readonly from: number; readonly to: number }) =>
    from === to
      ? `The tables of the shop “${shop}” are of version ${to} already.`
      : `The tables of the shop “${shop}” were brought from version ${from} to ${to}.`,
  status: ({ shop, server, version, builds, entries, photos, forks, benches, tables }: Status) => {
    const bytes = tables.reduce((sum, table) => sum + table.bytes, 0)
    return [
      `The shop “${shop}” on PostgreSQL ${server}, tables of version ${version}`,
      `  ${counted(builds, 'build', 'builds')}, ${counted(entries, 'entry', 'entries')}, ${counted(photos, 'photo', 'photos')}`,
      forks === 0
        ? '  no fork is open'
        : `  ${counted(forks, 'build has a fork', 'builds have a fork')} that nobody settled`,
      `  ${fixed(bytes / 1e6, 1, 'MB')} in all${builds === 0 ? '' : `, ${plain(Math.round(bytes / builds))} bytes a build`}`,
      ...tables.map(({ table, bytes: its }) => `    ${table}: ${fixed(its / 1e6, 2, 'MB')}`),
      ...benches.map(
        ({ name, program, seenAtUtc }) => `  ${name}: last seen ${seenAtUtc}, Bedplate ${program}`,
      ),
    ].join('\n')
  },
}
