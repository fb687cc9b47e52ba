/** What a page waits for the network at most, before it shows what is known: a fresh answer of a near server is sooner. */
const soonMs = 300

/** Whether something is done so soon that a page may wait for it. */
export async function isSoon(work: Promise<unknown>): Promise<boolean> {
  let timer: NodeJS.Timeout | undefined
  const late = new Promise<boolean>((resolve) => {
    timer = setTimeout(() => resolve(false), soonMs)
  })
  try {
    return await Promise.race([work.then(() => true), late])
  } finally {
    clearTimeout(timer)
  }
}
