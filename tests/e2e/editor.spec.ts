import { en } from '../../core/words/index.ts'
import { ask } from './ask.ts'
import { expect, test } from './bench.ts'
import { cameraOf } from './camera.ts'
import { pixelsLeftBehind } from './drawing.ts'
import { named, saying } from './named.ts'
import { backToTheList } from './seed.ts'

const { editor, library, revision } = en

test('a spec is begun, written by pointer and keys, and published; a build of it takes its next revision over', async ({
  bench,
}) => {
  const { page } = bench
  const button = (name: string | RegExp) => page.getByRole('button', { name, exact: true })
  const forms = page.getByRole('region', { name: editor.forms })
  const section = (key: keyof typeof editor.sections) =>
    forms.getByRole('button', { name: new RegExp(`^${editor.sections[key]}( \\(|$)`) })

  await test.step('a bare case is begun by keys', async () => {
    await button(library.title).press('Enter')
    await page.getByLabel(en.engines.person).fill('R. Ekdahl')
    await page.keyboard.press('Tab')
    await button(library.begin.title).press('Enter')
    const begin = page.getByRole('form', { name: library.begin.ofFamily })
    const fields = [
      [library.begin.name, 'Vale 2'],
      [library.begin.from, 'Vale 2 manual, edition 1'],
      [library.begin.bore, '72 mm'],
      [library.begin.pitch, '90 mm'],
      [library.begin.mainDiameter, '56 mm'],
      [library.begin.mainWidth, '20 mm'],
    ] as const
    for (const [label, typed] of fields) await begin.getByLabel(label).fill(typed)
    await page.keyboard.press('Enter')
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(
      editor.title({ name: 'Vale 2', revision: '1' }),
    )
  })

  await test.step('a group, fasteners by their places, an order and a torque', async () => {
    await section('groups').click()
    const group = forms.getByRole('form', { name: editor.groups.new })
    const { fields } = editor
    for (const [label, typed] of [
      [fields.name, 'Case bolts'],
      [fields.thread, 'M8×1.25'],
      [fields.propertyClass, '8.8'],
      [fields.grip, '40'],
      [fields.acrossFlats, '12'],
    ] as const)
      await group.getByLabel(label, { exact: true }).fill(typed)
    await group.getByLabel(fields.threadState).selectOption('oiled')
    await group.getByLabel(fields.reuse).selectOption('reusable')
    await group.getByLabel(fields.clamped).selectOption('aluminium')
    await group.getByRole('button').click()

    await button(editor.actions.place).click()
    // On a touch screen the number pad comes.
    await expect(forms.getByLabel(editor.position.along)).toHaveAttribute('inputmode', 'decimal')
    for (const across of ['45', '-45']) {
      await forms.getByLabel(editor.position.along).fill('45')
      await forms.getByLabel(editor.position.across).fill(across)
      await button(editor.place.put).click()
      await expect(button(named((any) => en.drafts.undo({ edit: any })))).toBeEnabled()
    }
    expect(await pixelsLeftBehind(page)).toBe(0)
    await button(editor.actions.order).click()
    await button(editor.order.addProcedure).click()
    await section('passes').click()
    const pass = forms.getByRole('form', { name: editor.passes.new })
    await pass.getByLabel(editor.passes.needs.value).fill('24 ± 2 N·m')
    await page.keyboard.press('Enter')
    await expect(forms.getByRole('listitem')).toHaveCount(2)
    // What is being typed is taken back first, then the last edit.
    await pass.getByLabel(editor.passes.needs.value).pressSequentially('9')
    await page.keyboard.press('Control+z')
    await expect(pass.getByLabel(editor.passes.needs.value)).toHaveValue('')
    await expect(forms.getByRole('listitem')).toHaveCount(2)
    await page.keyboard.press('Control+z')
    await expect(forms.getByRole('listitem')).toHaveCount(1)
    await page.keyboard.press('Control+Shift+z')
    await expect(forms.getByRole('listitem')).toHaveCount(2)
  })

  await test.step('a picture from the camera comes under the drawing, is placed by two points with the keys, and is there again', async () => {
    const { picture } = editor
    await button(editor.actions.picture).click()
    const file = page.getByLabel(en.photos.file)
    await file.setInputFiles({ name: 'notes.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('no picture') })
    await expect(page.getByRole('alert')).toContainText(
      en.problems['photo-no-picture']({ name: 'notes.jpg' }),
    )
    await cameraOf(page, null)
    await button(en.photos.fromCamera).press('Enter')
    await expect(page.getByRole('alert')).toContainText(saying(() => en.problems['camera-refused']({})))
    await cameraOf(page, { width: 1600, height: 1200 })
    await button(en.photos.fromCamera).press('Enter')
    await button(en.photos.camera.take).press('Enter')
    await button(picture.under).press('Enter')
    await button(picture.twoPoints).press('Enter')
    await page.keyboard.press('Enter')
    for (let steps = 0; steps < 4; steps += 1) await page.keyboard.press('Shift+ArrowRight')
    await page.keyboard.press('Enter')
    await expect(page.getByLabel(picture.distance)).toBeFocused()
    await page.keyboard.type('25')
    await page.keyboard.press('Enter')
    await expect(page.getByLabel(picture.show)).toBeChecked()
    await page.getByLabel(picture.show).press(' ')
    await expect(page.getByLabel(picture.show)).not.toBeChecked()
    await page.reload()
    await button(library.title).click()
    await button(library.drafts.open).click()
    await button(editor.actions.picture).click()
    await expect(page.getByLabel(picture.show)).not.toBeChecked()
  })

  await test.step('all is there after the page was loaded again, and is published', async () => {
    await page.reload()
    await button(library.title).click()
    await button(library.drafts.publishUnchecked).click()
    await expect(
      page
        .getByRole('status')
        .or(page.getByText(/Vale 2/))
        .first(),
    ).toBeVisible()
    await expect(button('Vale 2')).toBeVisible()
  })

  await test.step('a build of it takes over the next revision, with a reason', async () => {
    const engine = (await ask(page, 'engines.list', {})).find(({ name }) => name === 'Vale 2')!
    const facts = { engine: engine.id, name: 'Job 7', serial: '', person: 'R. Ekdahl', apprentice: false }
    await ask(page, 'builds.start', facts)
    await button('Vale 2').click()
    await button(library.revise).click()
    await page.getByLabel(library.begin.from).fill('Vale 2 manual, edition 2')
    await page.keyboard.press('Enter')
    await section('passes').click()
    const most = forms.getByRole('listitem').nth(1).getByLabel(editor.fields.to, { exact: true })
    await most.fill('27 N·m')
    await most.press('Tab')
    await expect(button(named((any) => en.drafts.undo({ edit: any })))).toContainText(
      en.drafts.undo({ edit: '' }),
    )
    await button(`← ${library.title}`).click()
    await button(library.drafts.publishUnchecked).click()
    await expect(button(library.drafts.publishUnchecked)).toHaveCount(0)
    await backToTheList(page)
    await page.getByRole('button', { name: /Job 7/ }).click()
    await button(revision.look).click()
    const row = page.getByRole('row', { name: /26 N·m.*27 N·m/ })
    await expect(row).toBeVisible()
    await page.getByLabel(revision.why).fill('edition 2 corrects pass 2')
    await page.keyboard.press('Enter')
    await expect(page.getByRole('region', { name: en.steps.frame.title })).toBeVisible()
    await expect(button(revision.look)).toHaveCount(0)
  })
})
