import { counted } from '../formats.ts'
import type { HelpWords } from '../../help/help-words.ts'

/** What stands on the page of the help itself. */
export const page: HelpWords['page'] = {
  title: 'Help',
  back: 'Back',
  search: 'Search the help',
  searchExample: 'for example: torque, ring gap, backup',
  nothingFound: 'Nothing found. Try another word, or a part of one.',
  found: ({ topics, terms }) =>
    `${counted(topics, 'topic', 'topics')}, ${counted(terms, 'word', 'words')} of the glossary`,
  topics: 'Topics',
  allTopics: 'All topics',
  groups: {
    start: 'First page and window',
    steps: 'Steps',
    tightening: 'Tightening',
    papers: 'Papers and archive',
    bench: 'The bench',
  },
  whatFor: 'What it is for',
  how: 'How it is done',
  troubles: 'What goes wrong, and what then',
  manualFirst:
    'The maker’s current manual comes first, then local rules and a qualified person. This help explains the program, not the engine.',
  glossary: 'Glossary',
  aboutGlossary: 'The words of the trade as the program uses them, in its three languages.',
  term: 'Word',
  meaning: 'What it is',
  demo: 'Demo engine: its numbers are invented.',
  guide: { title: 'Guided first build', read: 'Got it', more: 'More', leave: 'Leave the guide' },
}
