/**
 * Whether every text of the gallery fits: `npm run gallery-fit -- LANGUAGE WIDTHxHEIGHT [WORD …]`, where each word must be in an
 * entry's name and the language is one of the stage's. A line for each text that is cut off, beside the window or over
 * another, or in a list that cuts it; in `pseudo` also what comes from no table of words. Ends with 1 where there is any.
 */
import { addressesOnStage, showOnStage, withBrowser, withGallery } from './gallery.ts'
import { cutChoices, fitFaults, isOfHelp, isWithoutHelp, outsideBrackets } from './fit-faults.ts'

const [language = 'de', size = '1024x768', ...words] = process.argv.slice(2)
const [width, height] = size.split('x').map(Number)
if (!width || !height) throw new Error('how large? npm run gallery-fit -- de 1024x768')

await withBrowser((browser) =>
  withGallery(async (gallery) => {
    const page = await browser.newPage({ viewport: { width, height } })
    page.on('pageerror', (error) => console.log(`! ${error.message}`))
    const untold = new Map<string, string>()
    let faults = 0
    for (const address of await addressesOnStage(page, gallery)) {
      const entry = new URLSearchParams(address.slice(1)).get('entry')!
      if (!words.every((word) => entry.includes(word))) continue
      await showOnStage(page, address.replace('lang=en', `lang=${language}`))
      await page.waitForTimeout(100) // what is laid out when its size is known
      const found = [...(await page.evaluate(fitFaults)), ...(await page.evaluate(cutChoices))]
      if (await page.evaluate(isWithoutHelp)) found.push('no way into the help')
      for (const fault of found) {
        faults += 1
        console.log(`${entry}: ${fault}`)
      }
      if (language === 'pseudo' && !isOfHelp(entry))
        for (const text of await page.evaluate(outsideBrackets))
          if (!untold.has(text)) untold.set(text, entry)
    }
    for (const [text, entry] of untold) console.log(`${entry}: from no table “${text}”`)
    console.log(`${faults + untold.size} found`)
    process.exitCode = faults + untold.size === 0 ? 0 : 1
  }),
)
