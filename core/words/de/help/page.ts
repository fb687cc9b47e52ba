import type { HelpWords } from '../../help/help-words.ts'

/** What stands on the page of the help itself. */
export const page: HelpWords['page'] = {
  title: 'Hilfe',
  back: 'Zurück',
  search: 'In der Hilfe suchen',
  searchExample: 'z. B. Drehmoment, Stoßspiel',
  nothingFound: 'Nichts gefunden. Ein anderes Wort versuchen, oder einen Teil davon.',
  found: ({ topics, terms }) =>
    `${topics} ${topics === 1 ? 'Thema' : 'Themen'}, ${terms} ${terms === 1 ? 'Wort' : 'Wörter'} im Glossar`,
  topics: 'Themen',
  allTopics: 'Alle Themen',
  groups: {
    start: 'Erste Seite und Fenster',
    steps: 'Schritte',
    tightening: 'Anziehen',
    papers: 'Papiere und Archiv',
    bench: 'Die Werkbank',
  },
  whatFor: 'Wozu es dient',
  how: 'Wie es geht',
  troubles: 'Was schiefgeht, und was dann',
  manualFirst:
    'Zuerst gilt das aktuelle Handbuch des Herstellers, dann örtliche Regeln und eine Fachkraft. Diese Hilfe erklärt das Programm, nicht den Motor.',
  glossary: 'Glossar',
  aboutGlossary: 'Die Fachwörter, wie das Programm sie verwendet, in seinen drei Sprachen.',
  term: 'Wort',
  meaning: 'Was es ist',
  demo: 'Demo-Motor: seine Zahlen sind erfunden.',
  guide: { title: 'Geführter erster Aufbau', read: 'Verstanden', more: 'Mehr', leave: 'Führung beenden' },
}
