import { testLaw, type Edit, type Trial } from './trial.ts'

/** Shows the window, has the record opened, lets the program be ended, and looks at what is left. */
async function afterEnd(
  trial: Trial,
  end: (started: Awaited<ReturnType<Trial['shown']>>) => void,
): Promise<unknown> {
  const started = await trial.shown()
  await trial.request(started, 'engines.list')
  end(started)
  return { ended: await trial.soon(started.ended), isRecordClosed: trial.isRecordClosed }
}

const inOrder = { ended: { code: 0, signal: null }, isRecordClosed: true }

/** A large record takes its time to be closed. */
const slowClose: Edit = {
  text: 'record.close()])',
  becomes: 'new Promise((soon) => setTimeout(soon, 500)).then(() => record.close())])',
}

testLaw('signal-once', {
  given: [slowClose],
  seen: (trial) => afterEnd(trial, ({ child }) => child.kill('SIGINT')),
  kept: inOrder,
  broken: [{ text: '.then(() => record.close())])', becomes: '])' }],
})

testLaw('will-quit', {
  given: [slowClose],
  seen: (trial) => afterEnd(trial, ({ program }) => program.line.tell('close', { window: 1 })),
  kept: inOrder,
  broken: [{ text: 'event.preventDefault();\n\t\tmarkClosing(folder);', becomes: 'markClosing(folder);' }],
})

testLaw('shutdown-waits-if-asked', {
  given: [slowClose],
  seen: (trial) => afterEnd(trial, ({ program }) => program.line.tell('power', 'shutdown')),
  kept: inOrder,
  broken: [{ text: 'event?.preventDefault();', becomes: '' }],
})
