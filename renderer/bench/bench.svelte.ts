import type { Client, ShopFork, StoredBuild } from '../../core/contract/index.ts'
import type { Problem } from '../../core/problem/index.ts'
import { Guide } from '../help/guide.ts'
import { Crew } from '../people/crew.svelte.ts'
import { SerialDesk } from '../instruments/serial-desk.svelte.ts'
import type { Ports } from '../instruments/serial-port.ts'
import { Speaker, type Speech } from '../speech/speaker.svelte.ts'
import { WrenchRack } from '../wrenches/wrench-rack.svelte.ts'
import type { Language, Words } from '../../core/words/index.ts'
import type { ShownLanguage } from '../shown-language.svelte.ts'
import { BuildOpener, type RevisionAnswers } from './build-opener.ts'
import { BenchSettings } from './bench-settings.svelte.ts'
import { NewBuilds } from './new-builds.ts'
import type { OpenBuild } from './open-build.svelte.ts'
import { opening } from './opening.ts'
import type { Place } from './place.ts'
import { noOtherWindows, type OtherWindows } from './other-windows.ts'
import { StartLists } from './start-lists.svelte.ts'
import { UnfinishedWork } from './unfinished-work.ts'
import { BenchNews } from './bench-news.ts'
import { watchedClient } from './watched-client.ts'
import { BuildSearch } from './build-search.svelte.ts'
import { EnginePictures } from './engine-pictures.svelte.ts'

interface BenchOptions {
  readonly isPractice?: boolean
  /** The serial lines of this machine; null where the browser has none, and for a dry run. */
  readonly ports?: Ports | null
  /** Null where the browser cannot speak, and for a dry run. */
  readonly speech?: Speech | null
  /** What the window is shown in; English words are enough for a bench without a window. */
  readonly language?: ShownLanguage | null
}

/** The whole window's state: a snapshot of what the host last said, and where the person is. */
export class Bench {
  readonly #client: Client
  readonly #language: ShownLanguage | null
  readonly #opener: BuildOpener
  readonly #lists: StartLists
  /** Whether what is done at this bench is a dry run, and goes into no record. */
  readonly isPractice: boolean
  /** Kept here, so that it is as it was left when a person comes back from a build. */
  readonly search: BuildSearch
  readonly settings: BenchSettings
  readonly rack: WrenchRack
  readonly crew: Crew
  readonly pictures: EnginePictures
  readonly unfinished: UnfinishedWork
  readonly guide: Guide
  readonly newBuilds: NewBuilds
  readonly instruments: SerialDesk
  readonly speaker: Speaker
  readonly news: BenchNews
  #place = $state.raw<Place>({ at: 'opening' })
  #home = $state<'engines' | 'archive'>('engines')
  #problem = $state.raw<Problem | null>(null)

  constructor(
    client: Client,
    others: OtherWindows = noOtherWindows,
    { isPractice = false, ports = null, speech = null, language = null }: BenchOptions = {},
  ) {
    this.isPractice = isPractice
    this.#language = language
    this.#client = client = watchedClient(client, (problem) => this.#rescue(problem))
    this.settings = new BenchSettings(client, {
      report: (problem) => this.#report(problem),
      languageChosen: (chosen) => this.#languageChosen(chosen),
    })
    const kept = () => this.settings.kept
    this.rack = new WrenchRack(client)
    this.news = new BenchNews(client, others, {
      place: () => this.#place,
      loadBuilds: () => this.#lists.loadBuilds(),
      loadPeople: () => this.loadPeople(),
      loadWrenches: () => this.loadWrenches(),
    })
    this.crew = new Crew(client, {
      name: () => kept()?.person ?? '',
      keep: (person) => this.settings.keep({ person }),
    })
    this.#opener = new BuildOpener(client, {
      crew: this.crew,
      others,
      language: () => this.language,
      outdated: (build) => void this.#openAgain(build),
    })
    this.#lists = new StartLists(client, () => this.language)
    this.search = new BuildSearch(client, () => this.language)
    this.pictures = new EnginePictures(client, language?.words)
    this.instruments = new SerialDesk(ports, {
      list: () => kept()?.instruments ?? [],
      keep: (instruments) => this.settings.keep({ instruments: [...instruments] }),
    })
    this.speaker = new Speaker(speech, () => ({
      speaks: kept()?.speaks ?? false,
      rate: kept()?.speechRate ?? 1,
      voice: kept()?.voice ?? null,
      language: this.language,
    }))
    this.unfinished = new UnfinishedWork(
      () => kept()?.unfinished ?? [],
      (unfinished) => this.settings.keep({ unfinished }),
    )
    this.guide = new Guide(
      () => kept()?.guide ?? null,
      (guide) => this.settings.keep({ guide }),
    )
    this.newBuilds = new NewBuilds(client, this.crew, this.guide, {
      words: () => this.words,
      language: () => this.language,
      begun: (build) => others.announce({ build: build.line.id, seq: build.line.entries }),
      show: (build) => this.#begun(build),
      report: (problem) => this.#report(problem),
    })
  }

  get shownLanguage(): ShownLanguage | null {
    return this.#language
  }
  /** The language of the window. */
  get language(): Language {
    return this.#language?.language ?? 'en'
  }
  /** Its words, which follow it. */
  get words(): Words {
    if (this.#language === null) throw new Error('this bench has no window')
    return this.#language.words
  }
  get client() {
    return this.#client
  }
  get place() {
    return this.#place
  }
  /** The page that builds are opened from and left for. */
  get home() {
    return this.#home
  }
  get engines() {
    return this.#lists.engines
  }
  get builds() {
    return this.#lists.builds
  }
  /** What went wrong last, until the next thing that goes well. */
  get problem() {
    return this.#problem
  }

  /** First sight of the window: back to the build that lay open, else the engines; a way out where the record is damaged. */
  async open() {
    const host = await this.#client.request('host.read', {})
    if (!host.ok) return this.#report(host.problem)
    if (host.value.problem) return this.#rescue(host.value.problem)
    this.#problem = null
    const unread = await this.settings.read()
    const { kept } = this.settings
    if (unread || kept === null) return this.#report(unread)
    await Promise.all([this.#language?.show(kept.language), this.loadWrenches(), this.loadPeople()])
    if (kept.atBuild && (await this.enterBuild(kept.atBuild))) return
    await this.showEngines()
  }

  async showEngines() {
    const problem = await this.#lists.load()
    if (problem) this.#report(problem)
    else await this.#goHome('engines')
  }

  /** False when the build cannot be opened; the reason is in `problem`. */
  async enterBuild(build: string): Promise<boolean> {
    const openBuild = await this.#read(build)
    if (!openBuild) return false
    await this.#show(openBuild)
    return true
  }

  showArchive(): Promise<void> {
    return this.#goHome('archive')
  }

  /** To a page that needs nothing read before it is shown. */
  goTo(place: Place) {
    this.#place = place
  }

  /** Back from a build to the page it was opened from, which is as it was left. */
  leaveBuild(): Promise<void> {
    return this.#home === 'archive' ? this.showArchive() : this.showEngines()
  }

  /** Like `enterBuild`, after the host has taken in what the archive has of it. */
  async enterShopBuild(build: string) {
    const openBuild = await this.#opener.readFromShop(build)
    if (openBuild.ok) await this.#show(openBuild.value)
    else this.#report(openBuild.problem)
  }

  /** Two builds side by side; the reason is in `problem` where one of them cannot be read. */
  async compare(first: string, second: string) {
    const [left, right] = [await this.#read(first), await this.#read(second)]
    if (left && right) this.#place = { at: 'comparison', first: left, second: right }
  }

  /** Both lines of a build that was continued at two benches apart. */
  async showLines(fork: ShopFork) {
    const openBuild = await this.#read(fork.build)
    const there = openBuild && (await this.#opener.readLine(fork))
    if (there?.ok === false) this.#report(there.problem)
    else if (openBuild && there) this.#place = { at: 'lines', openBuild, there: there.value, fork }
  }

  async showWrenches(openBuild: OpenBuild | null) {
    this.#place = { at: 'wrenches', openBuild }
    await this.loadWrenches()
  }

  /** Back to the build that lies open, where one does. */
  async showPeople(openBuild: OpenBuild | null = this.#place.at === 'build' ? this.#place.openBuild : null) {
    this.crew.stopChoosing()
    this.#place = { at: 'people', openBuild }
    await this.loadPeople()
  }

  async loadWrenches() {
    this.#report(await this.rack.load())
  }

  async loadPeople() {
    this.#report(await this.crew.load())
  }

  /** Tells the host that this window is still there; a host whose windows have all gone ends itself. */
  async announcePresence() {
    const answer = await this.#client.request('host.read', {})
    if (!answer.ok) return this.#report(answer.problem)
    if (answer.value.problem) this.#rescue(answer.value.problem)
  }

  async #languageChosen(language: Language | null) {
    await this.#language?.choose(language)
    if (this.#place.at === 'engines') await this.showEngines()
  }

  async #goHome(home: 'engines' | 'archive') {
    this.#home = home
    this.#place = { at: home }
    if (this.settings.kept?.atBuild) await this.settings.keep({ atBuild: null })
  }

  async #read(build: string): Promise<OpenBuild | null> {
    const openBuild = await this.#opener.read(build)
    if (openBuild.ok) return openBuild.value
    this.#report(openBuild.problem)
    return null
  }

  /** Shows the build that is shown as it is now: it goes on by another revision of its spec. */
  async #openAgain(build: string) {
    const shown = await this.#read(build)
    const place = this.#place
    if (shown === null || !('openBuild' in place) || place.openBuild?.line.id !== build) return
    this.#place = { at: place.at === 'sheet' ? 'sheet' : 'build', openBuild: shown }
  }

  /** Has the build go on by a newer revision; why not, where it does not. */
  async takeRevision(openBuild: OpenBuild, answers: RevisionAnswers): Promise<Problem | null> {
    const taken = await this.#opener.takeRevision(openBuild, answers)
    if (!taken.ok) return taken.problem
    this.#place = { at: 'build', openBuild: taken.value }
    return null
  }

  /** Shows a build that was begun here; null where it stays as it is. */
  async #begun(begun: StoredBuild): Promise<Problem | null> {
    const openBuild = await this.#opener.open(begun)
    if (openBuild.ok) await this.#show(openBuild.value)
    return openBuild.ok ? null : openBuild.problem
  }

  async #show(openBuild: OpenBuild) {
    this.#problem = null
    const order = this.unfinished.in(openBuild.line.id)?.order
    if (order) openBuild.makeOrder((await opening.order()).OrderDraft.from(openBuild.spec, order))
    // On disk before it is on the screen: who sees the build comes back to it after a power cut.
    await this.settings.keep({ atBuild: openBuild.line.id })
    this.#place = { at: 'build', openBuild }
  }

  #rescue(problem: Problem) {
    this.#problem = null
    this.#place = { at: 'rescue', problem }
  }

  #report(problem: Problem | null) {
    if (problem) this.#problem = problem
  }
}
