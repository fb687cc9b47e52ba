import type { Page } from '@playwright/test'
import { spawn } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { done } from '../../core/problem/index.ts'
import { en } from '../../core/words/index.ts'
import { shopCommand } from '../../electron/launch/shop-command.ts'
import { finishBuild } from '../electron/mechanic.ts'
import { noServer, startServer, type TestServer } from '../electron/shop/server.ts'
import { ask } from './ask.ts'
import { expect, test } from './bench.ts'
import { withDataFolder } from './hosts/host.ts'
import { startShared } from './hosts/local.ts'
import { Mechanic } from './mechanic.ts'
import { saying } from './named.ts'
import { OtherBench } from './other-bench.ts'
import { pagesOf } from './pdf.ts'

const why = noServer()
if (why !== null) console.log(`The shop is not tested: ${why}`)

/** An archive on a real server, and the logins that its benches got. */
async function withShop(
  use: (server: TestServer, logins: readonly { address: string; password: string }[]) => Promise<void>,
) {
  const server = await startServer()
  try {
    await server.createDatabase('works')
    const { text } = await shopCommand(['init', server.address('works'), '--benches', '3'], {})
    const printed = [...text.matchAll(/address +(\S*shop_bench\S+)\n +password +(\S+)/g)]
    await use(
      server,
      printed.map(([, address = '', password = '']) => ({ address, password })),
    )
  } finally {
    await server.stop()
  }
}

/** `npm start -- --shop ADDRESS`, without a window; what it printed by the time it told of the shop, and what others on this machine see of it. */
async function startedWith(data: string, address: string): Promise<{ printed: string; commandLine: string }> {
  const root = join(import.meta.dirname, '../..')
  const start = ['electron/launch/start.mjs', '--local', '--no-window', '--language', 'en', '--data', data]
  const program = spawn(process.execPath, [...start, '--shop', address], { cwd: root })
  const ended = new Promise<void>((resolve) => program.once('close', () => resolve()))
  let printed = ''
  for (const stream of [program.stdout, program.stderr])
    stream.on('data', (chunk: Buffer) => (printed += chunk.toString()))
  await expect.poll(() => printed, { timeout: 60_000 }).toMatch(/the shop at|The shop/i)
  const commandLine =
    process.platform === 'linux' ? readFileSync(`/proc/${program.pid}/cmdline`, 'latin1') : ''
  program.kill('SIGTERM')
  await ended
  return { printed, commandLine }
}

/** Does the rest of a build at the bench of the page; answers with the number of its entries. */
async function finishedAt(page: Page, build: string): Promise<number> {
  const { specText, events } = await ask(page, 'builds.open', { build })
  return finishBuild({
    ...{ build, specText, events },
    act: async (build, after, command) =>
      done(await ask(page, 'builds.act', { build, after, person: 'R. Halloran', command })),
  })
}

test('a build goes from bench to bench by way of the shop, and a third prints its sheet', async ({
  unopened: bench,
  specs,
}) => {
  test.skip(why !== null, why ?? '')
  const { page } = bench
  const mechanic = new Mechanic(page, 'pointer')
  const goToShop = () => page.getByRole('button', { name: en.shop.title, exact: true }).click()

  await withDataFolder((folder) =>
    withShop(async (server, [first, second, third]) => {
      // Typed with its password at the start of another bench.
      const typed = first!.address.replace('@', `:${first!.password}@`)
      const { printed, commandLine } = await startedWith(join(folder, 'started'), typed)
      expect(printed).toContain(en.launch.shopJoined({ address: first!.address }))
      expect(printed + commandLine).not.toContain(first!.password)

      const machinist = await OtherBench.at(folder)
      await machinist.get('shop.name-bench', { name: 'Machine shop' })
      await machinist.get('shop.join', { ...first!, authority: '' })
      const build = await machinist.start('skerry-3', 'Ferry, port engine', 'F-201', 'Ana Ruiz')
      const pulls = (count: number) =>
        machinist.goOn(build, ({ runs }) => Object.values(runs).some((run) => run.pulls.length === count))
      await pulls(4)
      const pump = await machinist.start('skerry-3', 'Quarry pump', 'Q-7', 'Ana Ruiz')

      await bench.open((ask) => ask('preferences.keep', { person: 'R. Halloran' }).then(() => undefined))
      await goToShop()
      await page.getByLabel(en.shop.thisBench).fill('Bench 2')
      await page.getByLabel(en.shop.join.address).fill(second!.address)
      await page.getByLabel(en.shop.join.password).fill(second!.password)
      await page.getByRole('button', { name: en.shop.join.join, exact: true }).click()
      await expect(page.getByText(saying((any) => en.shop.connection.open({ since: any })))).toBeVisible()
      await expect(page.getByRole('button', { name: 'Quarry pump' })).toBeVisible()
      await ask(page, 'shop.open', { build: pump })

      await page.getByRole('button', { name: 'Ferry, port engine' }).click()
      await expect(mechanic.main).toBeDisabled()
      const before = await mechanic.entries()
      await pulls(5)
      await expect(page.locator(`[data-entries="${before + 1}"]`)).toBeAttached()

      const { joined } = await machinist.get('shop.read', {})
      const { id, name } = joined!.benches.find((each) => each.name === 'Bench 2')!
      await expect(page.getByRole('button', { name: en.shop.build.handOver })).toHaveCount(0)
      await machinist.act(build, { type: 'hand-over', to: { id, name }, note: 'Rods to go' })
      const handed = en.shop.build.handedOver({ bench: 'Machine shop', note: 'Rods to go' })
      await expect(page.getByText(handed)).toBeVisible()
      await expect(mechanic.main).toBeEnabled()
      await mechanic.letBounceTimePass()
      await page.getByRole('button', { name: en.shop.build.handOver }).click()
      await expect(page.getByRole('dialog').getByRole('button', { name: 'Machine shop' })).toBeInViewport()
      await page.getByRole('dialog').getByRole('button', { name: en.parts.cancel }).click()

      await server.kill()
      await mechanic.confirm()
      await page.getByRole('button', { name: en.buildWindow.allBuilds }).click()
      await goToShop()
      await expect(page.getByText(saying((any) => en.shop.notReached({ since: any })))).toBeVisible()
      await expect(page.getByText(en.shop.waiting({ entries: 1, builds: 1 }))).toBeVisible()

      // Two benches go on apart with a build, and a person says which line counts.
      const because = async (question: string, reason: string) => {
        await page.getByLabel(question).fill(reason)
        await page.keyboard.press('Enter')
      }
      await page.getByRole('button', { name: 'Quarry pump' }).click()
      await page.getByRole('button', { name: en.shop.build.takeOver }).click()
      await because(en.shop.build.whyTakeOver, 'No power at the machine shop')
      await expect(page.getByRole('button', { name: en.shop.build.handOver })).toBeVisible()
      await machinist.goOn(pump, ({ seq }) => seq === 3)
      await page.getByRole('button', { name: en.buildWindow.allBuilds }).click()
      await goToShop()
      await server.start()
      await expect(page.getByText(en.shop.waiting({ entries: 0, builds: 0 }))).toBeVisible({
        timeout: 40_000,
      })
      await page.getByRole('button', { name: en.shop.apart.look }).click({ timeout: 40_000 })
      await page.getByRole('button', { name: en.shop.apart.hereCounts({ own: null }) }).click()
      await because(en.shop.build.whySettle, 'The engine stands here')
      await expect(page.getByRole('button', { name: en.shop.build.handOver })).toBeVisible()
      await expect
        .poll(async () => (await machinist.get('shop.read', {})).joined?.apart[0]?.counts, {
          timeout: 40_000,
        })
        .toBe('there')
      const { events: kept } = await ask(page, 'builds.open', { build: pump })
      const entries = await finishedAt(page, build)
      await expect
        .poll(async () => (await machinist.get('builds.open', { build })).line.entries, { timeout: 40_000 })
        .toBe(entries)
      await machinist.close()

      // The page goes on at a bench that has nothing of its own yet.
      await page.goto('about:blank')
      await withDataFolder(async (thirdFolder) => {
        const foreman = await startShared(page, thirdFolder, specs, [], async (ask) => {
          await ask('shop.name-bench', { name: 'Office' })
          await ask('shop.join', { ...third!, authority: '' })
        })
        const pumpThere = await foreman.ask!('shop.open', { build: pump })
        expect(pumpThere.events).toEqual(kept)
        await goToShop()
        await page.getByRole('button', { name: 'Ferry, port engine' }).click()
        await mechanic.main.click()
        await expect(page.getByText(/Machine shop.*Rods to go/)).toBeVisible()
        // Kerning parts letters in what is read back.
        const printed = (await pagesOf(await foreman.pdf())).join('').replaceAll(/\s/g, '')
        for (const text of ['Ferry, port engine', 'F-201', 'Rods to go', 'Ana Ruiz', 'R. Halloran'])
          expect(printed).toContain(text.replaceAll(' ', ''))
        await foreman.leave?.()
      })
    }),
  )
})
