import { typedWords } from '../../../core/builds/index.ts'
import type { ShopLine } from '../../../core/contract/index.ts'
import { done, problem, refused } from '../../../core/problem/index.ts'
import type { Language } from '../../../core/words/index.ts'
import type { ShopBuild } from '../../shop/index.ts'
import { readStanding, type Store } from '../../store/index.ts'
import type { HandlersOf } from '../handlers.ts'
import type { ListedNames } from '../listed-names.ts'
import { lineOf, openBuild } from '../open-build.ts'
import { otherLines } from './lines.ts'
import type { ShopDesk } from './shop-desk.ts'

const pageLines = 50

/** Answers about the shop and the builds of its benches. */
export function shopRequests({
  store,
  desk,
  names,
}: {
  readonly store: Store
  readonly desk: ShopDesk
  readonly names: ListedNames
}): HandlersOf<'shop'> {
  function shownLine(language: Language, row: ShopBuild): ShopLine {
    const { specSha256: spec_sha256, headSha256: head_sha256, startedAtUtc, lastAtUtc } = row
    const flag = (is: boolean) => (is ? 1 : 0)
    const standing = readStanding({ standing: row.standing, head_sha256 })
    const line = names.lineIn(
      language,
      {
        ...{ id: row.id, year: row.year, ordinal: row.ordinal, name: row.name, serial: row.serial },
        ...{ engine: row.engine, demo: flag(row.demo), spec_sha256, head_sha256, entries: row.entries },
        ...{ started_at_utc: startedAtUtc, last_at_utc: lastAtUtc, standing: row.standing, begun_json: null },
        finished: flag(row.finished),
        voided: flag(row.voided),
        flagged: flag(row.flagged),
      },
      standing === 'stale' ? null : standing,
    )
    return {
      ...line,
      bench: { id: row.holder, name: desk.nameOf(row.holder) },
      isHere: row.holder === desk.here.id,
      asOf: row.receivedAtUtc,
      isForked: row.forked,
    }
  }

  return {
    'shop.read': async () => {
      // While nobody answers, nobody is asked: the page is not to wait for it.
      if (desk.way?.archive.connection().kind === 'open') await desk.way.lookWhoIsThere()
      return done(desk.state())
    },

    'shop.name-bench': async ({ name }) => {
      const called = desk.bench.call(name)
      if (!called.ok) return called
      await desk.way?.greet()
      return done(desk.state())
    },

    'shop.join': ({ address, password, authority }) => {
      const joined = desk.join(address, password, authority)
      return joined.ok ? done(desk.state()) : joined
    },

    'shop.leave': async () => {
      const left = await desk.leave()
      return left.ok ? done(desk.state()) : left
    },

    'shop.builds': async ({ words, state, bench, before, language }) => {
      if (desk.way === null) return refused('shop-not-joined', {})
      const rows = await desk.way.archive.builds({
        words: typedWords(words),
        called: (word) => names.called(word),
        ...{ state, before, holder: bench, most: pageLines + 1 },
      })
      if (!rows.ok) return rows
      const lines = rows.value.slice(0, pageLines).map((row) => shownLine(language, row))
      return done({ lines, more: rows.value.length > pageLines })
    },

    'shop.open': async ({ build }) => {
      const taken = desk.way === null ? refused('shop-not-joined', {}) : await desk.way.take(build)
      const opened = openBuild(store, build)
      // What was taken in before is shown as of then; why it is not of now, the page says anyway.
      if (!opened.ok) return taken.ok ? opened : taken
      return done(desk.stored(opened.value))
    },

    'shop.read-line': ({ build, line }) => {
      const opened = openBuild(store, build)
      if (!opened.ok) return opened
      const other = otherLines(store, build, desk.nameOf).find((each) => each.line === line)
      const [first] = other?.events ?? []
      if (other === undefined || first === undefined)
        return refused('build-not-apart', { name: opened.value.row.name }, 'line')
      const { row, specText, events } = opened.value
      return done({
        line: lineOf(row),
        specText,
        events: [...events.filter(({ seq }) => seq < first.seq), ...other.events],
        readOnly: problem('build-elsewhere', { name: row.name, bench: other.bench.name }),
      })
    },

    'shop.news': async ({ after }) =>
      desk.isJoined
        ? done({ isJoined: true, ...(await desk.news.after(after)) })
        : done({ isJoined: false, number: after, builds: [] }),
  }
}
