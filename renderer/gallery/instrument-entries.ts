import { PlayedPort, PlayedPorts } from '../../tests/renderer/instruments/played-ports.ts'
import BuildWindow from '../build-window/BuildWindow.svelte'
import InstrumentNote from '../instruments/InstrumentNote.svelte'
import UnaskedReading from '../instruments/UnaskedReading.svelte'
import InstrumentsPage from '../settings/InstrumentsPage.svelte'
import { benchWith, momentOf } from './at-bench.ts'
import { entriesOf, type Entry } from './entry.ts'
import { playedMachine, sampleInstruments } from './sample-instruments.ts'
import type { OnStage } from './shown.ts'

const part = entriesOf('Instruments and voice', 'panel')
const screen = entriesOf('Instruments and voice', 'screen')
const nothing = () => undefined
const nothingSent = { rivals: null, dropped: null, unasked: null, isOpen: true }
const field = { ...nothingSent, settle: nothing, useUnasked: nothing, dropUnasked: nothing }

/** A bench to which its gauge sent something. */
async function afterLines(
  shown: OnStage,
  send: (port: PlayedPort, ports: PlayedPorts) => Promise<void> | void,
) {
  const [port, ports] = [new PlayedPort(), new PlayedPorts()]
  ports.known = [port]
  const { usbVendorId, usbProductId } = port.getInfo()
  const usb = { vendor: usbVendorId!, product: usbProductId! }
  const instruments = [{ ...sampleInstruments[1]!, usb }]
  const bench = await benchWith(shown, { preferences: { instruments } }, { ports })
  bench.instruments.follow()
  await turn()
  await send(port, ports)
  await turn()
  return { bench }
}
/** Long enough for what is read from a stream that is kept in memory. */
const turn = () => new Promise((resolve) => setTimeout(resolve, 20))

export const instrumentEntries: readonly Entry[] = [
  part(
    'News of an instrument',
    'What became of its line, and of what it sent',
    InstrumentNote,
    async (shown) => ({
      'unplugged in mid line': await afterLines(shown, async (port) => {
        port.send('0.3')
        await turn()
        port.unplug()
      }),
      'plugged in again': await afterLines(shown, async (port, ports) => {
        port.unplug()
        await turn()
        ports.plugIn(new PlayedPort())
      }),
      'another unit': await afterLines(shown, (port) => port.send('3.4 bar\n')),
      'sends all the time': await afterLines(shown, (port) => port.send('0.1\n0.2\n0.3\n0.4\n0.5\n')),
    }),
  ),
  part(
    'Reading that nothing asked for',
    'Which counts, and what is to be done with it',
    UnaskedReading,
    () => ({
      'which of two': { field: { ...field, rivals: ['24.1 N·m', '24.3 N·m'] as const } },
      'half of one': { field: { ...field, dropped: 'broken-off' as const } },
      'two at once': { field: { ...field, dropped: 'crossed' as const } },
      kept: { field: { ...field, unasked: '0.35 mm' } },
    }),
  ),
  screen(
    'Instrument written down',
    'What is asked of one',
    InstrumentsPage,
    async (shown) => ({ all: { bench: await benchWith(shown, {}, playedMachine) } }),
    ['Add an instrument'],
  ),
  screen('Prompts said aloud', 'A run with the ways to hear it again', BuildWindow, async (shown) => {
    const build = momentOf('skerry-3', 'run in mid pass').build.branch()
    const bench = await benchWith(shown, { builds: [build], preferences: { speaks: true } }, playedMachine)
    await bench.enterBuild(build.begun.id)
    if (bench.place.at !== 'build') throw new Error('the build does not open')
    const { openBuild } = bench.place
    return { all: { bench, openBuild, theme: shown.look === 'dark' ? 'dark' : 'light' } }
  }),
]
