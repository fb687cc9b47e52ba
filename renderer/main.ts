import { mount } from 'svelte'
import './look/fonts.css'
import './look/tokens.css'
import './look/base.css'
import './look/list.css'
import './look/print.css'
import { Bench } from './bench/bench.svelte.ts'
import { otherWindows } from './bench/other-windows.ts'
import { connect } from './client/connect.ts'
import { portsOfThisMachine } from './instruments/serial-port.ts'
import { languageOfWindows, ShownLanguage } from './shown-language.svelte.ts'
import { speechOfThisMachine } from './speech/speaker.svelte.ts'
import Window from './Window.svelte'

const target = document.getElementById('window')
if (!target) throw new Error('the page has no place for the window')

// First of all: the launch token is off the address before anything is waited for.
const client = connect()
const language = await ShownLanguage.first({ system: navigator.languages, channel: languageOfWindows() })
const machine = { ports: portsOfThisMachine(), speech: speechOfThisMachine(), language }
mount(Window, { target, props: { bench: new Bench(client, otherWindows(), machine) } })
