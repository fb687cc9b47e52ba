export { buildCommand } from './commands.ts'
export type { BuildCommand } from './commands.ts'
export { buildEvent, recordedEvent } from './events.ts'
export type { BuildEvent, Half, RecordedEvent, ShellChoice } from './events.ts'
