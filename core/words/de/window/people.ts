import type { Words } from '../../words.ts'
import { pairText } from '../halves.ts'

const flags = { under: 'zu wenig', over: 'zu viel', moved: 'hat sich bewegt', problem: 'Problem' }
const roles = { mechanic: 'Mechaniker', apprentice: 'Auszubildende' }

export const people: Words['people'] = {
  title: 'Personen',
  backToBuild: 'Zurück zum Aufbau',
  whatFor:
    'Die Person an der Werkbank steht an jedem Eintrag. Ein Name, der nicht in der Liste steht, lässt sich immer eintippen. Die ' +
    'Liste ist da für die Wahl mit einem Tipp, für einen Ausweis, der tippt, und für eine PIN, wo die Werkstatt sie will: Die PIN ' +
    'hält Einträge ehrlich, einen Dieb hält sie nicht ab.',
  apprentices:
    'Der Aufbau durch Auszubildende wartet an bestimmten Schritten, bis ein Mechaniker dieser Liste sie geprüft hat. Als Ausweis gilt ' +
    'jedes Lesegerät, das tippt: Wo ein Messwert gefragt ist, gilt eine Zahl als Messwert; ein Ausweis mit Buchstaben vor ' +
    'der Zahl bleibt immer ein Ausweis.',
  whoChanges: 'Wer ändert die Liste',
  mechanic: 'Mechaniker',
  pin: 'PIN',
  change: ({ name }) => `${name} ändern`,
  remove: ({ name }) => `${name} entfernen`,
  add: 'Person hinzufügen',
  removedStayNamed:
    'Wer entfernt wird, bleibt an den eigenen Einträgen genannt. Nichts hiervon gehört zum Nachweis eines Aufbaus.',
  roles,
  line: (facts) => `${roles[facts.role]}${facts.hasBadge ? ', Ausweis' : ''}${facts.hasPin ? ', PIN' : ''}`,

  form: {
    new: 'Neue Person',
    name: 'Name, wie er auf das Blatt kommt',
    role: 'Rolle',
    badge: 'Ausweis:',
    hasBadge: 'vorhanden',
    noBadge: 'keiner',
    badgeGoes: 'wird entfernt',
    presentBadge: 'Ausweis jetzt vorhalten …',
    teachBadge: 'Ausweis anlernen',
    takeBadge: 'Ausweis entfernen',
    badgeLikeReading:
      '! Dieser Ausweis tippt, was ein Messwert sein könnte. Wo ein Messwert gefragt ist, gilt er als solcher: dort erst den Namen ' +
      'an der Werkbank antippen, dann den Ausweis vorhalten.',
    newPin: 'Neue PIN, leer: bisherige behalten',
    firstPin: 'PIN, leer: keine',
    takePin: 'PIN entfernen',
    keep: 'Speichern',
  },

  choose: {
    who: 'Wer ist an der Werkbank?',
    goOn: 'Weiter',
    somebodyElse: 'Andere Person',
    person: (facts) => `${roles[facts.role]}${facts.asksForPin ? ', PIN' : ''}`,
    anotherName: 'Anderer Name',
    takeName: 'Namen übernehmen',
    people: 'Personen …',
  },

  second: {
    kicker: 'zweite Person',
    itIsRight: ({ name }) => `${name}: in Ordnung`,
    sentBack: ({ name, reason }) =>
      `Zurückgegeben von ${name}: ${reason}. Nacharbeiten, dann erneut zur Prüfung rufen.`,
    did: ({ names }) => `Ausgeführt: ${names.join(', ')}. Vor dem Weiterbauen prüft jemand anderes.`,
    whatAgain: ({ name }) => `${name}: Was ist nachzuarbeiten?`,
    sendItBack: 'Zurückgeben',
    sendBack: '! Zurückgeben',
    firstWho: 'Zuerst wählen, wer geprüft hat.',
    whoLooks: 'Wer prüft?',
    nobodyElse: ({ names }) =>
      `Außer ${names.join(', ')} steht kein Mechaniker in der Personenliste. Dort hinzufügen, wer prüft.`,
    people: 'Personen …',
    again: 'Weiter daran arbeiten',
    played: 'Zweite Person',
    play: 'Als zweite Person prüfen',
  },

  lookAt: {
    marks: 'Maßkennzeichen an den Teilen nochmals ablesen. Notiert:',
    mark: ({ position, mark }) => `${position} ${mark ?? 'unleserlich'}`,
    shells: 'Mit Maßkennzeichen, Messwerten und Schalenpackungen vergleichen. Gewählt:',
    pair: (facts) =>
      `${facts.position}: ` +
      pairText({ split: facts.split, upper: facts.upper ?? '–', lower: facts.lower ?? '–' }),
    halves: 'Jede Schale im Lagersitz ansehen. Die Zeichnung zeigt, welche wohin gehört.',
    part: ({ name, tick }) => `${name}: ${tick}`,
    bead: 'Dichtraupe mit dem Verlauf auf der Zeichnung vergleichen.',
    fasteners: 'Jede Schraube auf der Zeichnung und am Motor ansehen. Jeder Anzug steht im Montageblatt.',
    noFlag: 'Keine Beanstandung.',
    flag: (facts) =>
      `! ${facts.fastener === null ? '' : `Schraube ${facts.fastener}: `}${facts.text ?? flags[facts.about]}. ` +
      `Antwort: ${facts.answer ?? 'keine'}`,
    checkedGood: ({ noted }) => `Antwort: in Ordnung${noted.length > 0 ? `, ${noted.join('. ')}` : ''}`,
  },
}
