import type { Words } from '../../words.ts'
import { capital, clock } from '../../formats/index.ts'
import { passes } from './passes.ts'
import { pullExplained } from './pull-explained.ts'
import { turnByAngle } from './turn-by-angle.ts'
import { wrenchForPull } from './wrench-for-pull.ts'

type Run = Words['run']

/** `6 hält 24 N·m`; of an action, `Hält 24 N·m`. */
const said = ({ number }: { readonly number: string | null }, what: string) =>
  number === null ? capital(what) : `${number} ${what}`
const passAndKind: Run['restart']['pass'] = ({ pass, kind }) => `Durchgang ${pass}, ${passes.kinds[kind]}`
const cap: Run['cap'] = ({ cap }) => `Deckel ${cap}`

export const run: Run = {
  heading: (facts) =>
    `${facts.cap === null ? '' : `${cap({ cap: facts.cap })}, `}Durchgang ${facts.pass} von ${facts.passes}, ${passes.kinds[facts.kind]}` +
    `${facts.step === null ? '' : `, ${passes.step(facts.step)}`}${facts.ownOrder ? ', eigene Reihenfolge' : ''}`,
  cap,
  orderOfCap: ({ cap }) => `Schrauben von Deckel ${cap}`,
  passes: 'Durchgänge',
  pulled: ({ pulled, planned }) => `${pulled} von ${planned}`,
  pulledInPass: ({ pulled, planned }) => `${pulled} von ${planned} in diesem Durchgang`,
  orderOfPass: 'Reihenfolge dieses Durchgangs',
  gap: 'Spalt',

  confirm: {
    backToPull: 'Zurück zum Anzug',
    useOrder: 'Reihenfolge übernehmen …',
    start: ({ procedure }) => `Start: ${procedure}`,
    areNew: ({ group }) => `${group}: alle neu`,
    swing: (facts) => `Hub ${facts.swing} von ${facts.swings}: ${facts.angle}`,
    newIn: ({ number }) => `Neue ${number} ist drin`,
    reads: (facts) => said(facts, `zeigt ${facts.reading}`),
    writeDown: ({ number }) => (number === null ? 'Messwert notieren' : `Messwert von ${number} notieren`),
    seated: (facts) => said(facts, 'liegt an'),
    loose: (facts) => said(facts, 'ist gelöst'),
    done: 'Erledigt',
    holds: (facts) => said(facts, `hält ${facts.target}`),
    turned: (facts) => said(facts, `ist um ${facts.target} gedreht`),
    at: (facts) => said(facts, `hat ${facts.target}`),
    moved: 'Hat sich bewegt',
  },

  next: 'Als Nächstes',
  usualLimits: 'Das Datenblatt nennt keine Grenzen: übliche.',
  measure: {
    gap: 'Spalt der Trennfläche messen',
    stretch: 'Länge nochmals messen',
    tightenOn: 'Weiter anziehen, bis die Längung erreicht ist',
    lengthBefore: 'Länge vor dem Anziehen messen',
  },
  seatByHand: 'Von Hand bis zur Auflage',
  seatByWrench: 'Mit dem Schlüssel bis zur Auflage',
  loosenIt: 'Lösen',
  longerBy: 'Längung',
  readingIn: ({ unit, onScale }) => `Messwert in ${unit}${onScale ? ', wie an der Skala' : ''}`,
  torqueThen: ({ unit, onScale }) => `Drehmoment dabei in ${unit}${onScale ? ', wie an der Skala' : ''}`,
  prevailing: {
    included: ({ most }) => `Klemmdrehmoment bis ${most}, im Drehmoment enthalten: nichts zuschlagen.`,
    notSaid: ({ most }) =>
      `Klemmdrehmoment bis ${most}. Ob es im Drehmoment enthalten ist, sagt das Datenblatt nicht: nichts zuschlagen.`,
    read: ({ unit }) => `Klemmdrehmoment beim Eindrehen, in ${unit}`,
    readFirst: ({ most }) =>
      `Höchstens ${most}. Vor der Auflage ablesen, ohne Adapter am Schlüssel: Im Drehmoment ist es nicht enthalten.`,
    onTop: (facts) =>
      facts.isRange
        ? [
            `Klemmdrehmoment ${facts.running}, wird zugeschlagen: `,
            { strong: `${facts.least} bis ${facts.most}` },
            ' an der Schraube.',
          ]
        : [
            `Klemmdrehmoment ${facts.running}, wird zugeschlagen: anziehen mit `,
            { strong: facts.target },
            ` (${facts.least} bis ${facts.most}).`,
          ],
  },
  asScaleShows: 'wie am Schlüssel angezeigt',
  unit: 'Einheit',
  asGaugeShows: 'wie am Messgerät angezeigt',
  typeOrConfirm: 'oder bestätigen',
  doubt: {
    again: 'Nochmals messen',
    sure: ({ typed }) => `Stimmt: ${typed} notieren`,
  },
  screenMayDarken: 'Der Bildschirm kann dunkel werden: Das System hält ihn nicht wach.',
  answerFirst: 'Zuerst die Frage oben beantworten oder abbrechen.',
  orderNotMade: 'Reihenfolge noch unvollständig: jede Schraube einmal nennen oder abbrechen.',
  unasked: {
    sent: ({ sent }) =>
      `Das Messgerät sendete ${sent}, ohne dass ein Messwert gefragt war. Er bleibt erhalten.`,
    use: 'Hier verwenden',
    drop: 'Verwerfen',
    which: 'Ein zweiter Messwert kam, bevor der erste bestätigt war. Welcher gilt?',
    counts: ({ sent }) => `${sent} gilt`,
    dropped: {
      'broken-off': 'Das Messgerät brach mitten im Messwert ab. Das Gesendete ist verworfen: erneut senden.',
      crossed: 'Zwei Messgeräte sendeten gleichzeitig. Das Gesendete ist verworfen: nacheinander senden.',
    },
  },

  benchCard: 'Werkbankkarte',
  clampMap: 'Klemmkraftbild',
  onceOnly: ({ group }) => `${group}: nur einmal verwendbar. Neue einsetzen, alte entsorgen.`,
  paused: ({ reason }) => `Unterbrochen${reason === '' ? '' : `: ${reason}`}.`,
  allDone: '✓ Alle Durchgänge erledigt, alle Beanstandungen beantwortet.',
  problem: '! Problem',
  pause: 'Pause',

  pauseForm: {
    why: 'Grund der Pause (freiwillig)',
    pause: 'Hier unterbrechen',
    usualReasons: ['Telefon', 'Feierabend', 'Warten auf ein Teil'],
  },
  problemForm: {
    what: ({ number }) =>
      number === null ? 'Was ist das Problem?' : `Was ist das Problem an Schraube ${number}?`,
    note: 'Problem notieren',
  },
  ownOrderForm: {
    why: 'Warum diese Reihenfolge statt der des Herstellers?',
    start: 'So beginnen',
    usualReasons: ['Reihenfolge des Herstellers nicht erreichbar', 'Auf Anweisung des Meisters', 'Zur Übung'],
  },

  takeBack: {
    offer: ({ number }) => (number === null ? 'Arbeitsgang zurücknehmen' : `${number} zurücknehmen`),
    why: ({ number }) =>
      number === null
        ? 'Letzten Arbeitsgang zurücknehmen: warum?'
        : `Schraube ${number} zurücknehmen: warum?`,
    takeBack: 'Zurücknehmen',
    mistyped: 'Messwert vertippt',
    usualReasons: ['Versehentlich gedrückt', 'Schlüssel falsch eingestellt', 'Auslösen nicht sicher'],
    wasTurned: ({ number, read }) =>
      `Wurde Schraube ${number} gedreht?${read === null ? '' : ` Abgelesen: ${read}.`}`,
    sayFirst: 'Zuerst angeben, ob sie gedreht wurde.',
    notTurned: 'Nein, bestätigt ohne zu drehen …',
    turned: 'Ja: sie muss neu begonnen werden …',
    whyNotTurned: ({ number }) => `Schraube ${number} zurücknehmen, nicht gedreht: warum?`,
    usualReasonsNotTurned: ['Versehentlich gedrückt', 'Vor dem Drehen gedrückt', 'Andere Schraube gedreht'],
    staysTurned: ({ number }) =>
      `Gedreht bleibt gedreht. ${number} ganz lösen: Ihre bisherigen Anzüge gelten nicht mehr, sie beginnt ` +
      'wieder mit dem ersten Durchgang.',
    usualReasonsTurned: ['Drehwinkel unsicher', 'Schlüssel falsch eingestellt'],
  },

  loosen: {
    offer: 'Lösen und neu beginnen …',
    whatHappens:
      'Ganz lösen. Ihre bisherigen Anzüge gelten nicht mehr, sie beginnt wieder mit dem ersten Durchgang.',
    why: ({ number }) => `${number} lösen und neu beginnen: warum?`,
    usualReasons: ['Anzüge unsicher', 'Muss wieder heraus'],
  },

  picked: {
    title: ({ number, where }) => `Schraube ${number}: ${where}`,
    notItsTurn: (facts) =>
      `Nicht an der Reihe. Offen: ${passAndKind(facts)}${facts.target === null ? '' : `, ${facts.target}`}.`,
    why: 'Jetzt außer der Reihe anziehen: warum?',
    isPulled: ({ number }) => `Schraube ${number} angezogen`,
    usualReasons: ['Die nächste ist noch nicht erreichbar', 'Auf Anweisung des Meisters'],
    nothingLeft: '✓ An ihr ist in diesem Anziehvorgang nichts mehr zu tun.',
    back: 'Zurück zur nächsten',
  },

  flag: {
    whatWasDone: 'Was wurde getan?',
    note: 'Maßnahme notieren',
    usualAnswers: {
      under: ['Nachgezogen bis zum Auslösen'],
      over: ['In Ordnung gebracht und neu gemessen'],
      moved: ['Nochmals auf den vollen Wert gebracht', 'Durch eine neue ersetzt'],
      problem: ['In Ordnung gebracht', 'Teil ersetzt'],
    },
    answerLater: 'Später beantworten (bis dahin bleibt es offen)',
    later: 'Vor dem Abschluss zu beantworten',
    answerNow: 'Jetzt beantworten',
    measureAgain: ({ pass }) => `Alle gelöst: neu messen ab Durchgang ${pass}`,
    gapOut:
      'Alle Schrauben der Verbindung lösen, die letzte zuerst. Suchen, was sie offen hält, wieder anlegen und den Spalt neu messen.',
  },

  readAgain: {
    offer: 'Falsch abgelesen: neu ablesen …',
    touchNothing: ({ number }) =>
      `Nichts berühren und ${number === null ? '' : `Schraube ${number} `}neu ablesen. Beide Messwerte bleiben in der Aufzeichnung.`,
    turnedAfter: ({ degrees }) => `Abgelesen wird, was nach den ersten ${degrees}° gedreht wurde.`,
    reads: ({ unit }) => `Messwert, in ${unit}`,
    torque: ({ unit }) => `Drehmoment, in ${unit}, falls falsch abgelesen (leer: wie bisher)`,
    why: 'Warum neu abgelesen?',
    usualReason: 'Erste Ablesung war falsch',
    note: 'Neuen Messwert notieren',
  },

  replace: {
    stretched:
      'Nach der berechneten Kraft über die Prüfkraft hinaus gedehnt; Zurückdrehen macht das nicht ungeschehen.',
    pastMost: 'Über die obere Grenze angezogen: wird ersetzt.',
    onceOnly: 'Nur einmal verwendbar.',
    whatToDo: ({ number }) => `Was mit Schraube ${number} zu tun ist`,
    loosen: ({ number }) => `Schraube ${number} ganz lösen.`,
    fitNew: 'Neue einsetzen, alte entsorgen.',
    beginAgain: ({ number }) =>
      `${number} wieder ab Durchgang 1 anziehen. Ihre bisherigen Anzüge gelten nicht mehr.`,
  },

  wait: {
    title: 'Wartezeit',
    left: ({ seconds }) => `noch ${clock(seconds)} warten`,
    over: '✓ Wartezeit abgelaufen.',
    goOnBefore: 'Vorzeitig fortfahren …',
    why: 'Warum wird die Wartezeit verkürzt?',
    shorten: 'Jetzt fortfahren',
    usualReasons: ['Schon anderweitig gewartet', 'Auf Anweisung des Meisters'],
  },

  overTime: {
    goOn: 'Verbindung trotzdem schließen …',
    why: 'Die Offenzeit des Dichtmittels ist abgelaufen. Warum wird trotzdem geschlossen?',
    closed: 'Mit Begründung anziehen',
    usualReasons: ['Dichtmittel angesehen, noch feucht', 'Dichtmittelhersteller lässt länger zu'],
  },

  restart: {
    offer: 'Neu beginnen …',
    offerInstead: 'Stattdessen neu beginnen …',
    whole: 'Alle Schrauben lösen, die letzte zuerst. Dann mit dem ersten Durchgang neu beginnen.',
    opensJoint: ({ steps }) =>
      `Die Verbindung geht auf, ihr Dichtmittel dichtet kein zweites Mal. Wird mit zurückgesetzt: ${steps.join(', ')}. Verbindung reinigen und neue Dichtraupe auftragen.`,
    from: ({ pass }) => `Anzüge ab Durchgang ${pass} gelten nicht mehr und werden wiederholt.`,
    beginWith: 'Beginnen mit',
    pass: passAndKind,
    why: 'Neu beginnen: warum?',
    beginAgain: ({ pass }) => `Neu ab Durchgang ${pass}`,
    usualReasons: ['Dichtmittel zu lange offen', 'Durchgang unterbrochen', 'Teil muss wieder heraus'],
  },

  angle: turnByAngle,
  wrench: wrenchForPull,
  explained: pullExplained,
}
