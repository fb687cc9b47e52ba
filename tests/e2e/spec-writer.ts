import { expect, type Locator, type Page } from '@playwright/test'
import type { PassChoice } from '../../core/drafts/index.ts'
import { en } from '../../core/words/index.ts'
import { named, saying } from './named.ts'

const { editor, library } = en
const { fields, passes } = editor

export interface TypedGroup {
  readonly name: string
  readonly thread: string
  readonly propertyClass: string
  readonly grip: string
  readonly acrossFlats: string
  readonly into?: 'nut'
}

/** A person who enters an engine on the pages of the library and the editor, and what it takes them: presses of the pointer and keys. */
export class SpecWriter {
  readonly page: Page
  presses = 0
  keys = 0

  constructor(page: Page) {
    this.page = page
  }

  get forms() {
    return this.page.getByRole('region', { name: editor.forms })
  }
  button(name: string | RegExp) {
    return this.page.getByRole('button', { name, exact: true })
  }
  async press(button: Locator) {
    this.presses += 1
    await button.click()
  }
  /** A field is gone to by one key, and its letters are typed. */
  async type(field: Locator, typed: string) {
    this.keys += 1 + typed.length
    await field.fill(typed)
  }
  /** The same in a field that takes what is typed once it is left. */
  async enter(field: Locator, typed: string) {
    await this.type(field, typed)
    this.keys += 1
    await field.press('Tab')
  }
  /** A list is opened, and one of it is taken. */
  async choose(list: Locator, value: string) {
    this.presses += 2
    await list.selectOption(value)
  }
  #listIn(within: Page | Locator, name: string) {
    return within.getByRole('combobox', { name, exact: true })
  }
  async paste(field: Locator, text: string) {
    this.presses += 1
    this.keys += 2
    await field.fill(text)
  }

  /** Seconds, by hunt and peck: two for each press, one for each key. What is left of the hour is for reading the manual. */
  get seconds() {
    return 2 * this.presses + this.keys
  }

  async begin(name: string, from: string, measures: Partial<Record<keyof typeof library.begin, string>>) {
    const form = this.page.getByRole('form', { name: library.begin.ofFamily })
    await this.press(this.button(library.begin.title))
    await this.type(form.getByLabel(library.begin.name, { exact: true }), name)
    await this.type(form.getByLabel(library.begin.from, { exact: true }), from)
    await this.choose(this.#listIn(form, library.search.family), 'caps')
    for (const [measure, typed] of Object.entries(measures)) {
      const label = library.begin[measure as 'bore']
      if (measure === 'thrustMain') await this.choose(this.#listIn(form, label), typed)
      else if (measure === 'hasRods') await this.press(form.getByLabel(label))
      else await this.type(form.getByLabel(label, { exact: true }), typed)
    }
    await this.press(form.getByRole('button', { name: library.begin.go }))
    await expect(this.page.getByRole('heading', { level: 1 })).toHaveText(
      editor.title({ name, revision: '1' }),
    )
  }

  async section(key: keyof typeof editor.sections) {
    await this.press(this.forms.getByRole('button', { name: new RegExp(`^${editor.sections[key]}( \\(|$)`) }))
  }
  async action(key: keyof typeof editor.actions) {
    await this.press(this.button(editor.actions[key]))
  }
  async face(id: string) {
    await this.choose(this.#listIn(this.page, editor.face), id)
  }

  async group({ into, ...typed }: TypedGroup) {
    await this.section('groups')
    const form = this.forms.getByRole('form', { name: editor.groups.new })
    for (const key of ['name', 'thread', 'propertyClass', 'grip', 'acrossFlats'] as const)
      await this.type(form.getByLabel(fields[key], { exact: true }), typed[key])
    await this.choose(this.#listIn(form, fields.threadState), 'oiled')
    await this.choose(this.#listIn(form, fields.reuse), 'reusable')
    await this.choose(this.#listIn(form, fields.clamped), into === 'nut' ? 'steel' : 'cast-iron')
    await this.press(form.getByRole('button'))
    const added = this.forms.getByRole('group', { name: new RegExp(`^${typed.name} · `) })
    await expect(added).toBeVisible()
    if (into !== undefined) await this.choose(this.#listIn(added, fields.into), into)
  }

  /** The first by numbers, the others at a pitch, and all of them again on the other side of the crank. */
  async rows(group: string, first: readonly [string, string], pitch: string, count: number) {
    await this.action('place')
    await this.choose(this.#listIn(this.forms, editor.place.group), group)
    await this.type(this.forms.getByLabel(editor.position.along), first[0])
    await this.type(this.forms.getByLabel(editor.position.across), first[1])
    await this.press(this.button(editor.place.put))
    await this.action('repeat')
    await this.type(this.forms.getByLabel(editor.repeat.count), String(count))
    await this.type(this.forms.getByLabel(editor.repeat.along), pitch)
    await this.press(this.button(editor.repeat.go))
    await this.action('mirror')
    await expect(this.forms.getByRole('status')).toHaveText(editor.selected({ count }))
    await this.press(this.button(editor.mirror.go))
    await expect(this.forms.getByRole('status')).toHaveText(editor.selected({ count: 2 * count }))
  }

  /** Places from a table that lies in the manual or a spreadsheet. */
  async table(group: string, text: string, count: number) {
    await this.action('place')
    await this.choose(this.#listIn(this.forms, editor.place.group), group)
    await this.press(this.forms.getByText(editor.paste.title))
    await this.paste(this.forms.getByLabel(editor.paste.columns), text)
    await this.press(this.button(editor.fits.takeIn))
    await expect(this.list('fastener/')).toHaveCount(count)
  }

  /** What can be chosen on the drawing, as the list beside it has it. */
  list(about: string) {
    return this.page.locator(`[data-about^="${about}"]`)
  }

  /** A procedure for the face, and its order tapped on the drawing, by the numbers beside the fasteners. */
  async order(numbers: readonly string[]) {
    await this.action('order')
    await this.press(this.button(editor.order.addProcedure))
    await this.press(this.button(editor.order.begin))
    for (const number of numbers) await this.tap(number)
    await expect(this.forms.getByRole('status')).toHaveText(
      editor.order.soFar({ done: numbers.length, of: numbers.length }),
    )
  }
  async tap(number: string) {
    this.presses += 1
    const name = saying((any) => en.drawing.list.fastener({ number, where: any }))
    const row = this.page.getByRole('list', { name: en.view.inWords }).getByRole('button', { name })
    await row.press('Enter')
  }

  /** A pass comes after the others. */
  async pass(kind: PassChoice, typed: string) {
    const form = this.forms.getByRole('form', { name: passes.new })
    const list = this.#listIn(form, passes.columns.kind)
    if ((await list.inputValue()) !== kind) await this.choose(list, kind)
    if (kind !== 'loosen')
      await this.type(form.getByLabel(passes.needs[kind === 'action' ? 'instruction' : 'value']), typed)
    const { length } = await this.rowsOfPasses.all()
    this.keys += 1
    await form.getByRole('button', { name: passes.add }).press('Enter')
    await expect(this.rowsOfPasses).toHaveCount(length + 1)
  }
  get rowsOfPasses() {
    return this.forms.getByRole('list', { name: passes.caption }).locator('> li')
  }
  /** The proposed pass by hand is none of the manual. */
  async withoutThePassByHand() {
    await this.press(this.forms.getByRole('button', { name: passes.takeOut({ pass: 1 }) }))
  }

  /** Another person comes and compares every value with the manual; what is typed unseen is typed as the manual prints it. */
  async compared(by: string, unseen: readonly string[]) {
    const { check } = editor
    await this.section('check')
    await this.press(this.forms.getByTitle(en.people.choose.who))
    await this.type(this.page.getByLabel(en.people.choose.anotherName), by)
    await this.press(this.button(en.people.choose.takeName))
    const card = this.forms.getByRole('region', { name: check.title })
    const same = card.getByRole('button', { name: check.same })
    const progress = this.forms.getByRole('status').first()
    const left = [...unseen]
    const [done = 0, of = 0] = (await progress.innerText()).match(/\d+/g)!.map(Number)
    for (let at = done; at < of; at += 1) {
      await expect(progress).toContainText(check.progress({ done: at, of }))
      if ((await same.count()) > 0) {
        this.keys += 1
        await same.press('Enter')
      } else {
        await this.type(card.getByRole('textbox'), left.shift() ?? '')
        this.keys += 1
        await card.getByRole('textbox').press('Enter')
      }
    }
    await expect(progress).toContainText(check.checked({ by }))
    expect(left).toEqual([])
  }

  async publish(name: string) {
    await this.press(this.button(`← ${library.title}`))
    const of = this.page.getByRole('group', { name, exact: true })
    await this.press(
      of.getByRole('button', {
        name: named(
          (_: never) => library.drafts.publish,
          (_: never) => library.drafts.publishUnchecked,
        ),
      }),
    )
    await expect(of).toHaveCount(0)
  }
}
