export { runCommand, runCommands } from './commands.ts'
export type { RunCommand } from './commands.ts'
export { runEvent, runEvents } from './events.ts'
export type { Reading, RunEvent } from './events.ts'
