import { done, problem, refused } from '../../../core/problem/index.ts'
import type { Store } from '../../store/index.ts'
import type { HandlersOf } from '../handlers.ts'
import { lineOf, openBuild } from '../open-build.ts'
import { otherLines } from './lines.ts'
import type { ShopDesk } from './shop-desk.ts'

/** Answers about the shop and its benches. */
export function shopRequests({
  store,
  desk,
}: {
  readonly store: Store
  readonly desk: ShopDesk
}): HandlersOf<'shop'> {
  return {
    'shop.read': async () => {
      // While nobody answers, nobody is asked: the page is not to wait for it.
      if (desk.link?.archive.connection().kind === 'open') await desk.link.lookWhoIsThereSoon()
      return done(desk.state())
    },

    'shop.name-bench': async ({ name }) => {
      const called = desk.bench.call(name)
      if (!called.ok) return called
      await desk.link?.greet()
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

    'shop.open': async ({ build }) => {
      const isHere = store.build(build) !== null
      // While nobody answers, nobody is asked, unless nothing is here.
      if (isHere && desk.cut() === null) await desk.link?.takeSoon(build)
      const taken = isHere || desk.link === null ? null : await desk.link.take(build)
      const opened = openBuild(store, build)
      // What was taken in before is shown as of then; why it is not of now, the page says anyway.
      if (!opened.ok) return taken === null || taken.ok ? opened : taken
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
        readOnly: problem('build-elsewhere', { name: row.name, bench: other.bench.name, is: 'open' }),
      })
    },

    'shop.news': async ({ after }) =>
      desk.isJoined
        ? done({ isJoined: true, ...(await desk.news.after(after)) })
        : done({ isJoined: false, number: after, builds: [] }),
  }
}
