import type { Condition, Verdict } from '../../bridge/protocol';
import { count, KEEP } from './format';

/** Judging a part: its family, one question after another, and what that comes to. */
export const judge = {
  title: 'Judge', gone: { first: 'This part is not in the job.', then: 'It may belong to another job, or its job file was not brought in yet.', go: 'To the parts' },
  family: {
    title: 'What is it?', lead: 'Its family says what to look at. You can change it later: nothing you recorded is lost.',
    proposed: 'Likely', byName: 'by its name', learnt: 'as you said before', all: 'All families', own: 'Your own families', now: 'chosen now',
    make: 'Make one of my own', chosen: (name: string) => `It is: ${name}`, none: 'not said yet', keep: 'Leave it as it is',
    form: { title: 'A family of my own', name: 'What are such parts called?', needed: 'Give it a name first.', ask: 'Tick what holds for all of them',
      singleUse: 'Single use', singleUseSecond: 'a new one goes in whatever the old one looks like', pair: 'Both sides together', pairSecond: 'left and right of an axle',
      safety: 'Safety-critical', safetySecond: 'somebody can be hurt when it breaks', route: 'When it is not used again, usually', noRoute: 'not said', go: 'Make it', back: 'Back' },
  },
  again: 'When it is used again:',
  question: (n: number, all: number) => `${n}${KEEP}of${KEEP}${all}`,
  questionName: (n: number, all: number) => `Question ${n} of ${all}`,
  otherSide: (side: string, what: string) => `${side}: ${what}`, otherSideOpen: (side: string) => `${side}: not looked at`, otherWord: 'other side',
  skip: 'Skip', skipped: 'skipped', next: 'Next', back: 'Back', photo: 'Photo', photoOf: (what: string) => `Photo that shows: ${what}`, photoSafe: 'Photo is safe',
  photoOpen: (n: number) => `Open photo ${n}`, answered: (question: string, answer: string) => `${question}: ${answer}`, skippedSaid: (question: string) => `${question}: skipped`,
  notAnswered: 'open', ownQuestion: 'a question of your own',
  addOwn: 'Add a question of my own', own: { label: 'What else is looked at?', hint: (family: string) => `Asked of every part of the family: ${family}`, go: 'Add the question', needed: 'Write the question first.', added: 'Question added', back: 'Back' },
  noQuestions: 'This family has no questions yet. Add one of your own.',
  found: 'Looked at', ofAnswered: (n: number, all: number) => `${n}${KEEP}of${KEEP}${all} looked at`, measures: 'Measured', measuredOf: (n: number) => (n ? count(n, 'measure') : ''),
  pattern: 'Keep it on the shelf as a pattern until its replacement has been compared with it. Then strike it out.',
  verdict: { fit: 'Fit to use again', rework: 'Can be put right', scrap: 'Scrap', 'not-known': 'Not known yet' } satisfies Record<Verdict, string>,
  verdictMore: { fit: 'Everything asked was looked at, and nothing speaks against it.', rework: 'Not as it is, but the trade puts this right.', scrap: 'Not to be used again.', 'not-known': 'Something is still open.' } satisfies Record<Verdict, string>,
  once: 'Single use', lookAgain: 'All was looked at; what is doubtful has to be looked at again.', singleUse: 'Renewed whatever it looks like: decided as Buy.', singleUseReason: 'A part of this kind is used once.',
  notLooked: (n: number) => (n === 1 ? '1 question is open.' : `${n} questions are open.`), skippedOnes: (n: number) => (n === 1 ? '1 was skipped: that leaves it open.' : `${n} were skipped: that leaves it open.`),
  toMeasure: 'A measure is not proved yet.', noFamily: 'Say first what it is.',
  firstWord: (word: string) => `First word at the strip: ${word}.`,
  condition: { sound: 'sound', doubtful: 'look again', rework: 'needs work', scrap: 'scrap' } satisfies Record<Condition, string>,
  reasons: 'Why', routes: 'What is left to do with it', left: 'Left', notLeft: 'Not left', usual: 'usual', noneLeft: 'No route is left: look again, or change its marks.',
  together: (tag: string) => `Decide it together with ${tag}, the other side: both or neither.`, matchedWith: (tags: string) => `Decide it together with ${tags}: one matched set.`, matched: 'It is kept and renewed together with what it was matched to.', pairAlone: 'Both sides of the axle are decided together; the other side is not in the job yet.',
  otherVerdict: (side: string, tag: string, verdict: string) => `${side ? `${side}, ` : ''}${tag}: ${verdict}`,
  toRoutes: 'To its routes', toRoutesCost: 'quotes and choice', goOn: 'Go on', open: (n: number) => `${n}${KEEP}open`, start: 'Judge it', change: 'Change', changeAnswer: 'Change:',
  sheet: { title: 'Judged', family: 'Family', say: 'Say what it is', perhaps: (family: string) => `${family}?`, go: 'Judge it', goOn: 'Go on judging', look: 'Look again', open: 'nothing looked at yet' },
};
