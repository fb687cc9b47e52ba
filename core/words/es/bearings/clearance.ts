import type { Words } from '../../words.ts'

export const clearance: Words['clearance'] = {
  withWorst: ({ nominal, least, most }) => `${nominal} (${least} a ${most})`,
  verdicts: {
    inside: 'dentro de límites',
    'may-be-tight': 'quizá demasiado justa',
    'may-be-loose': 'quizá demasiado holgada',
    'may-be-either': 'quizá demasiado justa o demasiado holgada',
    tight: 'demasiado justa',
    loose: 'demasiado holgada',
  },
  wear: {
    'within-service': 'no alcanzado',
    'may-be-beyond': 'quizá superado',
    'beyond-service': 'superado',
  },
}
