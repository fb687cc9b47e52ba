import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'

type Parts = Words['partsList']

const inBuilds = (count: number): string => counted(count, 'Aufbau', 'Aufbauten')

const reuse: Parts['reuse'] = (rule) => {
  if (rule === 'new-each-time') return 'jedes Mal neu'
  const limits = [
    ...(rule.limit === undefined ? [] : [rule.limit]),
    ...(rule.uses === undefined ? [] : [`in insgesamt ${inBuilds(rule.uses)}`]),
  ]
  return `wiederverwendbar: ${limits.join('; ')}`
}
const times: Parts['times'] = ({ name, count }) => (count === 1 ? name : `${name} (${count})`)

export const partsList: Parts = {
  title: 'Teile dieses Schritts',
  order: 'Bestellliste',
  times,
  part: ({ name, count, place }) => [{ strong: times({ name, count }) }, `, ${place}`],
  reuse,
  isInNew: ({ name, count }) => `${times({ name, count })}: eingebaut, neu`,
  inNew: ({ count }) => (count === 1 ? 'Neu eingebaut' : `Alle ${count} neu eingebaut`),
  otherwise: 'Anders …',
  tickLater: 'Eingebaut, Teile später abhaken',
  later: 'Teile später abhaken',
  takeBack: 'Haken zurücknehmen',
  whyTakenBack: ({ name }) => `${name}: Warum gilt es nicht als eingebaut?`,
  tick: (facts) =>
    `${facts.reason === null ? '✓' : '!'} ${facts.count} ${facts.condition === 'new' ? 'neu' : 'wiederverwendet'}` +
    `${facts.before === null ? '' : `, vorher in ${inBuilds(facts.before)}`}` +
    `${facts.number === null ? '' : `, Nr. ${facts.number}`}` +
    `${facts.reason === null ? '' : `, entgegen dem Datenblatt: ${facts.reason}`}`,
  form: {
    condition: 'Zustand',
    conditions: { new: 'neu', 'used-again': 'wiederverwendet' },
    count: ({ left }) => `Wie viele von ${left}`,
    before: 'In wie vielen Aufbauten vorher',
    number: 'Nummer des Lieferanten, falls vorhanden',
    why: {
      'new-each-time': 'Laut Datenblatt jedes Mal neu. Warum werden diese wiederverwendet?',
      'used-up': 'Grenze der Verwendung erreicht. Warum werden sie wiederverwendet?',
    },
    limit: ({ limit }) => `Nur: ${limit}.`,
    tick: 'So notieren',
    countWrong: ({ left }) => `Eine ganze Zahl von 1 bis ${left} eintippen.`,
    beforeWrong: 'Eintippen, in wie vielen Aufbauten sie waren: eine ganze Zahl ab 1.',
  },
  count: {
    whatFor:
      'Jedes Teil der Liste ist im Motor, oder sein Verbleib ist angegeben. In jeden Behälter und unter die Werkbank sehen.',
    accounted: ({ parts }) =>
      `✓ Verbleib geklärt: ${counted(parts, 'Teil', 'Teile')} der Liste, keines offen.`,
    left: ({ name, left, step }) => `${times({ name, count: left })} für „${step}“: nicht abgehakt.`,
    where: ({ name, left, step }) =>
      `${times({ name, count: left })} für „${step}“: nicht abgehakt. Im Motor: oben angeben. Sonst: Wo verblieben, und warum?`,
    usual: ['Übrig, nicht gebraucht', 'Das alte blieb eingebaut'],
    noteLeftOver: 'Als übrig notieren',
    leftOver: (facts) => `${times(facts)} übrig: ${facts.reason}`,
    done: 'Die Zählung stimmt',
    isDone: '✓ Gezählt.',
  },
  orderList: {
    title: 'Zu bestellende Teile',
    whatFor:
      'Noch nicht eingebaute Teile. Wiederverwendbares nur beschaffen, wo das alte über der Grenze liegt.',
    nothing: 'Alle Teile der Liste sind eingebaut.',
    part: 'Teil',
    place: 'Stelle',
    count: 'Anzahl',
    when: 'Wann',
    number: 'Nummer des Lieferanten',
    for: 'Für',
    csv: 'Alles zu Bestellende als CSV',
    shellsOf: ({ fit }) => `Lagerschale, ${fit}`,
    grade: ({ grade, size }) => `Klasse ${grade}${size === null ? '' : `, ${size}`}`,
  },
  sheet: {
    title: 'Teile',
    replaced: 'Neu',
    usedAgain: 'Wiederverwendet',
    against: 'ENTGEGEN DATENBLATT WIEDERVERWENDET',
    againstOne: (facts) => `! ${times(facts)} (${facts.step}): ${facts.reason}`,
    left: 'Übrig',
    open: 'Verbleib offen',
    part: 'Teil',
    fitted: 'Eingebaut',
    whenWho: 'Wann, wer',
    notFitted: ({ count }) => `! Verbleib offen: ${count}`,
    leftOver: ({ count, reason }) => `${count} übrig: ${reason}`,
  },
}
