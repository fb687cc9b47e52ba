import { createSubscriber } from 'svelte/reactivity'

/** One clock for all that shows time: it goes only while something is shown by it. */
const eachSecond = createSubscriber((update) => {
  const clock = setInterval(update, 1000)
  return () => clearInterval(clock)
})

/** This computer's time in milliseconds since 1970; what is shown by it is looked at again each second. */
export function nowEachSecond(): number {
  eachSecond()
  return Date.now()
}
