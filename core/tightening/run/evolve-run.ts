import type { RunEvent } from './events.ts'
import { degrees, nanometres, newtonMetres } from '../../quantity/index.ts'
import { answerOf, reasonOf, type FlagAnswer, type Reason } from './answers.ts'
import { counts } from './plan.ts'
import type { Flag, Pull, Run } from './run.ts'

/**
 * A run after one more event. Any event that `decideRun` gave is taken as it is: judging is done there.
 * Throws on an event of a run that was never started, which no record can hold.
 */
export function evolveRun(run: Run | undefined, event: RunEvent): Run {
  if (event.type === 'run-started') return emptyRun(event)
  if (run === undefined) throw new Error(`${event.type} in a run of ${event.procedure} that was not started`)
  switch (event.type) {
    case 'fasteners-declared-new':
      return { ...run, declaredNew: [...run.declaredNew, event.group] }
    case 'fastener-pulled':
      return withPull(run, {
        number: event.pull,
        pass: event.pass,
        fastener: event.fastener,
        cap: event.cap ?? null,
        reading: event.reading,
        turning: turningOf(event.turning),
        from: degrees(event.from_deg ?? 0),
        held: event.held ?? null,
        running: event.running ?? null,
        verdict: event.verdict,
        outOfOrder: event.outOfOrder,
        takenBack: null,
        stretch: event.stretch_nm === undefined ? null : nanometres(event.stretch_nm),
        torque: event.torque ?? null,
        setAside: null,
      })
    case 'pull-taken-back':
      return {
        ...run,
        pulls: run.pulls.map((pull) =>
          pull.number === event.pull ? { ...pull, takenBack: event.reason } : pull,
        ),
        flags: run.flags.map((flag) =>
          endsWithPull(flag, event.pull) || (event.mistyped === true && isOpenOver(flag, event.pull))
            ? { ...flag, answer: event.reason }
            : flag,
        ),
      }
    case 'pull-read-again': {
      const { pull: number, reading, verdict, stretch_nm, torque, reason } = event
      const pulls = run.pulls.map((pull) =>
        pull.number === number
          ? {
              ...pull,
              reading,
              verdict,
              stretch: stretch_nm === undefined ? pull.stretch : nanometres(stretch_nm),
              torque: torque ?? pull.torque,
              turning: event.turning === undefined ? pull.turning : turningOf(event.turning),
            }
          : pull,
      )
      const flags = run.flags.map((flag) =>
        flag.pull === number && flag.answer === null && flag.about !== 'problem'
          ? { ...flag, answer: reason }
          : flag,
      )
      const fastener = run.pulls.find((pull) => pull.number === number)?.fastener ?? null
      const read = { ...run, pulls, flags }
      return verdict === 'within'
        ? read
        : withFlag(read, { about: verdict, pull: number, fastener, text: null })
    }
    case 'problem-noted':
      return withFlag(run, { about: 'problem', pull: event.pull, fastener: event.fastener, text: event.text })
    case 'flag-answered':
      return {
        ...run,
        flags: run.flags.map((flag) =>
          flag.number === event.flag ? { ...flag, answer: answerOf(event) } : flag,
        ),
      }
    case 'fastener-loosened': {
      const { fastener, cap = null } = event
      const loosened = { ...run, loosened: [...run.loosened, fastener] }
      const again = capAgain(loosened, cap, reasonOf(event))
      const isOwn = (pull: Pull) => pull.fastener === fastener
      return runsAgain(setAside(again, 'loosened', reasonOf(event), isOwn), isOwn)
    }
    case 'fastener-replaced':
      return {
        ...run,
        loosened: run.loosened.filter((each) => each !== event.fastener),
        flags: run.flags.map((flag) =>
          flag.fastener === event.fastener && flag.about === 'over' && flag.answer === null
            ? { ...flag, answer: { deed: 'replaced' as const } }
            : flag,
        ),
      }
    case 'pass-repeated':
      return setAside(run, 'pass-repeated', { deed: 'pass-repeated' }, ({ pass }) => pass === event.pass)
    case 'run-restarted': {
      // From the first pass every fastener comes out: whether those for one use are new is asked again.
      const declaredNew = event.pass === 0 ? [] : run.declaredNew
      const again = { ...run, declaredNew, loosened: event.pass === 0 ? [] : run.loosened }
      const stopped = setAside(again, 'run-restarted', reasonOf(event), ({ pass }) => pass >= event.pass)
      const aside = event.pass === 0 ? runsAgain(stopped, () => true) : stopped
      return event.measuredAgain === true ? withoutGapFlags(aside, reasonOf(event)) : aside
    }
    case 'run-paused':
      return { ...run, paused: event.reason }
    case 'run-resumed':
      return { ...run, paused: null }
    default:
      return event satisfies never
  }
}

function emptyRun({ procedure, ownOrder }: Extract<RunEvent, { type: 'run-started' }>): Run {
  const untouched = { declaredNew: [], pulls: [], flags: [], loosened: [], paused: null }
  return { procedure, ownOrder: ownOrder ?? null, ...untouched }
}

/** Pulls that no longer count, with the flags that end with them answered by the reason. */
function setAside(
  run: Run,
  why: NonNullable<Pull['setAside']>,
  reason: FlagAnswer,
  which: (pull: Pull) => boolean,
): Run {
  const aside = new Set(run.pulls.filter((pull) => counts(pull) && which(pull)).map(({ number }) => number))
  return {
    ...run,
    pulls: run.pulls.map((pull) => (aside.has(pull.number) ? { ...pull, setAside: why } : pull)),
    flags: run.flags.map((flag) =>
      flag.pull !== null && aside.has(flag.pull) && endsWithPull(flag, flag.pull)
        ? { ...flag, answer: reason }
        : flag,
    ),
  }
}

/**
 * A cap that is loosened: the actions after it are done again, and what the crank took to turn is void where it was too much, because
 * that cap was tight then. With that the flags about it are answered.
 */
function capAgain(run: Run, cap: string | null, answer: Reason): Run {
  if (cap === null) return run
  const isTooMuch = ({ number, turning }: Pull) =>
    turning !== null && run.flags.some((flag) => isOpenOver(flag, number))
  const voided = run.pulls.filter(
    (pull) => counts(pull) && pull.fastener === null && (pull.cap === cap || isTooMuch(pull)),
  )
  const aside = setAside(run, 'loosened', answer, (pull) => voided.includes(pull))
  const isAnswered = (flag: Flag) => voided.some(({ number }) => isOpenOver(flag, number))
  return { ...aside, flags: aside.flags.map((flag) => (isAnswered(flag) ? { ...flag, answer } : flag)) }
}

/** What fasteners took to run down is read again once they are loose, of pulls that were taken back too. */
function runsAgain(run: Run, which: (pull: Pull) => boolean): Run {
  return { ...run, pulls: run.pulls.map((pull) => (which(pull) ? { ...pull, running: null } : pull)) }
}

/** Of what no longer counts, the flags about the face and no fastener. */
function withoutGapFlags(run: Run, answer: Reason): Run {
  const aside = new Set(run.pulls.filter((pull) => !counts(pull)).map(({ number }) => number))
  const isGap = ({ pull, fastener, about, answer }: Flag) =>
    pull !== null && aside.has(pull) && fastener === null && about === 'over' && answer === null
  return { ...run, flags: run.flags.map((flag) => (isGap(flag) ? { ...flag, answer } : flag)) }
}

function turningOf(turning: { readonly rise_Nm: number | null } | undefined): Pull['turning'] {
  if (turning === undefined) return null
  return { rise: turning.rise_Nm === null ? null : newtonMetres(turning.rise_Nm) }
}

function isOpenOver(flag: Flag, pull: number): boolean {
  return flag.pull === pull && flag.about === 'over' && flag.answer === null
}

function withPull(run: Run, pull: Pull): Run {
  const loosened = run.loosened.filter((each) => each !== pull.fastener)
  const pulled = { ...run, loosened, pulls: [...run.pulls, pull] }
  const { verdict, number, fastener } = pull
  return verdict === 'unread' || verdict === 'within'
    ? pulled
    : withFlag(pulled, { about: verdict, pull: number, fastener, text: null })
}

function withFlag(run: Run, flag: Omit<Flag, 'number' | 'answer'>): Run {
  return { ...run, flags: [...run.flags, { ...flag, number: run.flags.length + 1, answer: null }] }
}

/**
 * A pull that came short or moved is done again once it is taken back, and with that the flag is answered.
 * What went over stays over, and a problem stays a problem: those flags still want an answer.
 */
function endsWithPull(flag: Flag, pull: number): boolean {
  return flag.pull === pull && flag.answer === null && (flag.about === 'under' || flag.about === 'moved')
}
