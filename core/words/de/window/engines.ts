import type { Words } from '../../words.ts'
import { counted } from '../formats.ts'

export const engines: Words['engines'] = {
  program: 'Bedplate',
  purpose: 'Lagerschalen, Verschraubung und Nachweis für Kurbeltrieb und Motorblock.',
  wrenches: 'Drehmomentschlüssel',
  people: 'Personen',
  otherPages: 'Weitere Seiten',
  record: 'Aufzeichnung und Sicherungen',
  onTheBench: 'Auf der Werkbank',
  noBuilds: 'Noch nichts. Einen Motor wählen, um einen Aufbau zu beginnen.',
  sample: {
    offer:
      'Oder erst umsehen, in einem Demo-Aufbau. Einer ist halb fertig: Lagerschalen gewählt und eingelegt, Pleuelschrauben ' +
      'im letzten Durchgang. Einer ist abgeschlossen: Montageblatt, Klemmkraftbild und Zeile im Archiv ansehen. ' +
      'Jeder bleibt als Demo gekennzeichnet in der Aufzeichnung dieser Werkbank und lässt sich wie jeder andere für ungültig erklären.',
    take: { 'half-way': 'Ausprobieren', finished: 'Fertigen ansehen' },
    offerGuided:
      'Oder einen Demo-Motor vom ersten Schritt an aufbauen, mit einer kurzen Notiz neben jedem Schritt.',
    beginGuided: 'Geführten ersten Aufbau beginnen',
    guided: 'Demo: geführter erster Aufbau',
    name: 'Demo: Fähre, Backbordmotor',
    machinist: 'Mara Holt (Demo)',
    mechanic: 'Jonas Reet (Demo)',
    problem: 'Riefen unter dem Kopf von R4',
    answer: 'Auflagefläche mit Abziehstein geglättet',
    whole: {
      name: 'Demo: Bewässerung, Pumpe 3',
      problem: 'Gewinde von 5 lief von Hand rau',
      answer: 'Herausgedreht, Blockgewinde nachgeschnitten, Schraube neu geölt',
      withoutPhoto: 'Demo: niemand da, um eines aufzunehmen',
    },
  },
  buildLine: (facts) =>
    `${facts.engine}${facts.demo ? ', Demo' : ''}${facts.serial ? ` · Seriennr. ${facts.serial}` : ''}`,
  lastEntry: ({ at }) => `letzter Eintrag ${at}`,
  standing: {
    step: ({ place, of, name }) => `Schritt ${place} von ${of} · ${name}`,
    allStepsDone: 'Alle Schritte erledigt, noch nicht abgenommen',
    awaitsSecond: 'wartet auf zweite Person',
    next: ({ fastener, pass, passes }) =>
      `${fastener === null ? '' : `als Nächstes ${fastener}, `}Durchgang ${pass} von ${passes}`,
    paused: ({ reason }) => (reason ? `Unterbrochen: ${reason}` : 'Unterbrochen'),
    openProblems: ({ problems }) =>
      `${counted(problems, 'offenes Problem', 'offene Probleme')} zu beantworten`,
  },
  startOn: 'Aufbau beginnen',
  demo: 'Demo',
  cannotBeBuilt: 'Kein Aufbau möglich:',
  overruled:
    'Das aktuelle Handbuch des Herstellers, örtliche Vorschriften und eine Fachkraft gehen diesem Programm vor. Demo-Motoren sind ' +
    'erfunden: nie einen echten Motor danach aufbauen.',

  newBuildOf: ({ engine }) => `Neuer Aufbau: ${engine}`,
  buildName: 'Name dieses Aufbaus',
  buildNameExample: 'z. B. Pumpe 4, zweite Überholung',
  serial: 'Seriennummer, falls vorhanden',
  person: 'Wer ist an der Werkbank',
  personExample: 'Name, wie er auf das Blatt kommt',
  listOfPeople: 'Aus der Personenliste',
  apprentice: 'Aufbau durch Auszubildende: bestimmte Schritte brauchen eine zweite Person',
  lookedAt: ({ steps }) => `Mechaniker aus der Liste prüft: ${steps.join(', ')}.`,
  noneLookedAt: 'Das Datenblatt dieses Motors sieht für keinen Schritt eine zweite Person vor.',
  doubtful: 'Fraglich in diesem Datenblatt:',
  start: 'Aufbau beginnen',
}
