import type { Words } from '../../words.ts'

export const clearance: Words['clearance'] = {
  withWorst: (facts) => `${facts.nominal} (${facts.least} bis ${facts.most})`,
  verdicts: {
    inside: 'in den Grenzen',
    'may-be-tight': 'evtl. zu eng',
    'may-be-loose': 'evtl. zu weit',
    'may-be-either': 'evtl. zu eng oder zu weit',
    tight: 'zu eng',
    loose: 'zu weit',
  },
  wear: {
    'within-service': 'nicht erreicht',
    'may-be-beyond': 'evtl. überschritten',
    'beyond-service': 'überschritten',
  },
}
