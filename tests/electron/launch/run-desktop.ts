import { runDesktop } from '../../../electron/launch/desktop-run.ts'

// Runs a program as the desktop host in a process of its own, which can be signalled as a terminal does it:
// `node run-desktop.ts BINARY WINDOW_MS SAME_SIGNAL_MS`. How it went is the last line.
const [binary = '', windowMs, sameSignalMs] = process.argv.slice(2)
const run = await runDesktop(
  { binary, words: ['/app', '--data', '/data'], env: process.env },
  { windowMs: Number(windowMs), sameSignalMs: Number(sameSignalMs) },
)
console.log(JSON.stringify(run))
