import { connect } from 'node:net'
import { Line, type Answers } from '../line.ts'
import type { OfTheProgram, OfTheTest } from '../questions.ts'

/** Names the socket on which the test listens. */
export const socketVariable = 'STAND_IN_SOCKET'

/** What the test may ask; each part of the program enters its own. */
export const answers: { -readonly [Name in keyof OfTheProgram]?: Answers<OfTheProgram>[Name] } = {}

/** Past all handlers of Node, as C++'s `exit` is. */
function exitNow(code: number): never {
  return (process as NodeJS.Process & { reallyExit(code: number): never }).reallyExit(code)
}

const socket = connect(process.env[socketVariable] ?? '')
socket.on('error', () => exitNow(70)) // the test has gone: nobody holds the page any more

/** The test that stands for the user, the screen and the renderer processes. */
export const outside = new Line<OfTheTest, OfTheProgram>(socket, answers as Answers<OfTheProgram>)

export function warn(line: string): void {
  console.error(`stand-in warns: ${line}`)
  outside.tell('warning', { line })
}

/** Ends the process at once, after all that was said has arrived. */
export function endProcess(code: number): void {
  outside.tell('ended', { code })
  outside.end(() => exitNow(code))
}
