import { count, number } from './format';

/** New pieces of a part: ordered, in, compared with the old one. */
export const supply = {
  title: 'New pieces', none: 'none ordered', lead: 'Keep the old one until the new one was compared with it, before the return window closes.', add: 'It is ordered', from: 'From', fromHint: 'Supplier', quantity: 'Pieces', due: 'Due', dueHint: 'Empty: no day was given.', isIn: 'It is here already', notYet: 'not yet', here: 'here', put: 'Put it down', wrongCount: 'Give a whole number, from 1.',
  done: (n: number) => `${count(n, 'piece')} ordered`, doneIn: (n: number) => `${count(n, 'piece')} in`, pieces: (n: number) => count(n, 'piece'), wanted: (right: number, all: number) => `${number(right)} of ${number(all)} here and right`,
  states: { coming: 'on order', in: 'in, not compared', right: 'in, right', wrong: 'wrong' }, dueOn: (day: string) => `due ${day}`, noDay: 'no day given', overdue: (day: string) => `was due ${day}`, inOn: (day: string) => `in on ${day}`, orderedOn: (day: string) => `ordered ${day}`,
  in: 'In today', inOf: (from: string) => `In today${from ? `: from ${from}` : ''}`, inDone: 'In today', right: 'Right', wrong: 'Wrong', compare: 'Compared with the old one', comparedRight: 'Compared: right', comparedWrong: 'Compared: wrong', again: 'Compare again', againOf: (from: string) => `Compare again${from ? `: from ${from}` : ''}`, againDone: 'To be compared again', change: 'Change', changed: 'Delivery changed', strike: 'Strike out', struck: 'Delivery struck out', inDay: 'In on', changeTitle: 'Change the delivery',
};
