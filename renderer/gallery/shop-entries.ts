import ArchivePage from '../archive/ArchivePage.svelte'
import PeoplePage from '../people/PeoplePage.svelte'
import BuildBenches from '../shop/BuildBenches.svelte'
import BuildWindow from '../build-window/BuildWindow.svelte'
import BenchNameForm from '../shop/BenchNameForm.svelte'
import HandOver from '../shop/HandOver.svelte'
import HandedOver from '../shop/HandedOver.svelte'
import JoinForm from '../shop/JoinForm.svelte'
import LinesPage from '../shop/LinesPage.svelte'
import ShopCutNote from '../shop/ShopCutNote.svelte'
import ShopPage from '../shop/ShopPage.svelte'
import ShopStanding from '../shop/ShopStanding.svelte'
import { ShopView } from '../shop/shop-view.svelte.ts'
import WallPage from '../shop/WallPage.svelte'
import WallTile from '../shop/WallTile.svelte'
import Wrenches from '../wrenches/Wrenches.svelte'
import { benchAt, benchWith, momentOf } from './at-bench.ts'
import { nextCommand } from '../../tests/core/builds/next-command.ts'
import { entriesOf, type Entry } from './entry.ts'
import { memoryClient } from './memory-client.ts'
import { atBenchOf, sampleJoined, sampleShop, sampleShopLines, troubledShop } from './sample-shop.ts'
import type { OnStage } from './shown.ts'

const part = entriesOf('Shop', 'page')
const screen = entriesOf('Shop', 'screen')
const nothing = () => undefined
const view = () => new ShopView(memoryClient(sampleShop(null)), () => 'en')
const benchIn = (shown: OnStage, joined: typeof sampleJoined | null) =>
  benchWith(shown, {}, {}, sampleShop(joined))

export const shopEntries: readonly Entry[] = [
  screen('Shop', 'The benches that share an archive, and their builds', ShopPage, async (shown) => ({
    joined: { bench: await benchIn(shown, sampleJoined) },
    'not joined': { bench: await benchIn(shown, null) },
    'cut off, with trouble': { bench: await benchIn(shown, troubledShop) },
  })),
  screen('Archive of a shop', 'The builds of all benches to be found again', ArchivePage, async (shown) => ({
    joined: { bench: await benchIn(shown, sampleJoined) },
    'cut off': { bench: await benchIn(shown, troubledShop) },
  })),
  screen('People of a shop', 'One list for all benches', PeoplePage, async (shown) => ({
    all: { bench: await benchIn(shown, troubledShop), openBuild: null },
  })),
  screen('Wrenches of a shop', 'One list for all benches', Wrenches, async (shown) => ({
    all: { bench: await benchIn(shown, troubledShop), onback: nothing },
  })),
  screen('Wall view', 'All open builds, to be read from 3 m', WallPage, async (shown) => ({
    'three builds': { bench: await benchIn(shown, sampleJoined) },
    'cut off': { bench: await benchIn(shown, troubledShop) },
  })),
  screen('Two lines of a build', 'To be settled by a person', LinesPage, async (shown) => {
    const of = (moment: string) => benchAt(shown, momentOf('skerry-3', moment).build)
    const [{ openBuild, ...frame }, { openBuild: there }] = [
      await of('run in mid pass'),
      await of('run with a flag'),
    ]
    const [fork, settled] = troubledShop.apart
    return {
      'not settled': { ...frame, openBuild, there, fork: { ...fork!, entry: 40 } },
      settled: { ...frame, openBuild, there, fork: { ...settled!, entry: 40 } },
    }
  }),
  part('Benches of a build', 'Where it is, and the ways to another bench', BuildBenches, async (shown) => {
    const { build } = momentOf('skerry-3', 'run in mid pass')
    const at = (where: Parameters<typeof atBenchOf>[1]) => benchAt(shown, build, {}, atBenchOf(build, where))
    return {
      'at another bench': await at('elsewhere'),
      'at another bench, cut off': await at('cut off'),
      'at two benches apart': await at('apart'),
    }
  }),
  screen('Build at another bench', 'It is read here, and may be taken over', BuildWindow, async (shown) => {
    const { build } = momentOf('skerry-3', 'run in mid pass')
    const finished = build.branch()
    while (!finished.state.finished) finished.does(nextCommand(finished.engine.spec, finished.state))
    const at = (which: typeof build, where: Parameters<typeof atBenchOf>[1]) =>
      benchAt(shown, which, {}, atBenchOf(which, where))
    return {
      open: await at(build, 'elsewhere'),
      'finished, cut off': await at(finished, 'cut off'),
      'at two benches apart': await at(build, 'apart'),
    }
  }),
  part('Handing over', 'Which bench goes on, and what it should know', HandOver, async (shown) => {
    const { build } = momentOf('skerry-3', 'run in mid pass')
    const before = await benchAt(shown, build, {}, atBenchOf(build, 'here'))
    return { 'which bench': { ...before, onclose: nothing } }
  }),
  part('Name of the bench', 'What people call it', BenchNameForm, () => ({
    named: { view: view(), name: 'Bench 2' },
  })),
  part('Build handed over', 'What the bench before says', HandedOver, () => ({
    'with a note': { from: { id: 'ba9876543210', name: 'Bench 1' }, note: 'Rods are in, caps to go' },
    'without': { from: { id: 'ba9876543210', name: 'Bench 1' }, note: '' },
  })),
  part('Joining a shop', 'Where its archive is', JoinForm, () => ({
    empty: { view: view(), name: 'bench-pc', onjoined: nothing },
  })),
  part('Bench and shop', 'What is connected, what waits, what was refused', ShopStanding, () => ({
    'all sent': { joined: sampleJoined, onlook: nothing },
    'cut off, with trouble': { joined: troubledShop, onlook: nothing },
  })),
  part('Cut off from the shop', 'Why only what this bench has is listed', ShopCutNote, () => ({
    'since a time': { cut: { since: troubledShop.since, problem: troubledShop.problem! } },
  })),
  part('Tile of the wall', 'One open build', WallTile, () => {
    const [well, trouble, forked] = sampleShopLines()
    return {
      'going on': { line: well!, onopen: nothing },
      'with a problem': { line: trouble!, onopen: nothing },
      'apart at two benches': { line: forked!, onopen: nothing },
    }
  }),
]
