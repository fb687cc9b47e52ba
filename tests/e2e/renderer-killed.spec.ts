import { expect, test } from './bench.ts'
import { Mechanic } from './mechanic.ts'

test('a window whose renderer ends in mid pass comes back at the same bolt', async ({ bench }) => {
  test.setTimeout(120_000)
  const mechanic = new Mechanic(bench.page, 'pointer')
  await mechanic.startBuild(/Skerry 3/, 'Renderer killed', 'R. Halloran')
  for (const marks of ['1 2 2 3', 'F G G H']) await mechanic.noteMarks(marks)
  const entries = await mechanic.entries()
  await bench.crash()
  await expect(mechanic.heading).toHaveText('Rod marks')
  expect(await mechanic.entries()).toBe(entries)
  await mechanic.noteMarks('4 5 4')
})
