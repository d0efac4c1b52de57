import type { Stance } from '../../bridge/protocol';
import type { Term, TermKind } from '../suppliers/terms';
import { capital, count, KEEP, listed } from './format';
import type { Vocabulary } from './vocabulary';

/** Who sells and who works on what is sent out, and on which terms. */
export const suppliers = (trade: Vocabulary) => ({
  title: `Suppliers and ${trade.specialist}s`, second: (n: number) => String(n),
  add: `Add a supplier or ${trade.specialist}`, put: 'Add', name: 'Name', nameHint: 'As quotes call them: quotes are found by it.', remark: 'Remark', noName: 'no name yet', needsName: 'Give it a name, as you call it.', made: (name: string) => `${name} added`,
  none: { first: 'Nobody has terms yet.', then: 'What carriage costs, and from which sum it is free, decides what is best bought together. One figure is enough to begin with.' },
  gone: { first: 'This one is not in the job.', then: 'It may be struck out, or belong to another job.', go: 'To all of them' },
  unnamed: 'Named in quotes', unnamedCount: 'tap to add', addIt: 'Add',
  quotes: (n: number) => (n ? count(n, 'quote') : 'no quote'), noTerms: 'no terms yet',
  short: { shipping: (sum: string) => `${trade.carriage} ${sum}`, freeFrom: (sum: string) => `free from ${sum}`, wait: (days: string) => `wait ${days}` },
  sections: { name: 'Who it is', carriage: capital(trade.carriage), least: 'Least order and charge', wait: 'How long it takes', returns: 'Sending back and warranty', tax: 'Tax and duty' },
  terms: {
    shipping: `${capital(trade.carriage)} of an order`, free_from: 'Free from', minimum_order: 'Least order', minimum_charge: 'Least charge',
    wait: 'Usual wait', wait_least: 'Wait, least', wait_most: 'Wait, most', back_order: 'Not on the shelf',
    return_window: 'May go back within', restocking: 'Kept when it goes back', surcharge_deadline: 'Old unit back within', warranty: 'Warranty', tax_rate: 'Tax on top', duty_rate: 'Duty on top',
  } satisfies Record<Term, string>,
  hints: {
    shipping: 'Once for each order or batch.', free_from: `The value of an order from which there is no ${trade.carriage}.`, minimum_order: 'Below this value nothing is sent.', minimum_charge: 'A batch costs at least this.',
    back_order: 'How often it has to be made or to come in first.', surcharge_deadline: `For the ${trade.surcharge} to come back.`, restocking: 'Of its price.', tax_rate: `Where their prices come before tax. It counts on every quote of theirs that says no tax, on ${trade.carriage} and on least charges.`, duty_rate: 'On price and freight, before the tax.',
  } as Partial<Record<Term, string>>,
  units: { days: 'days', times: 'in 100', share: '%', months: 'months' } satisfies Record<Exclude<TermKind, 'money'>, string>,
  times: (n: string) => `${n} in${KEEP}100`, percent: (n: string) => `${n}${KEEP}%`,
  wrong: {
    money: 'Give a sum, like 9 or 9.50.', days: 'Give whole days, up to 3650.', times: 'Give a number from 0 to 100.', share: 'Give a number from 0 to 100.', months: 'Give whole months, from 1.', mass: 'Give it as a figure, like 2 or 2.5.',
    crossed: 'The least is more than the most.', leastAbove: 'The least is more than the usual wait.', mostBelow: 'The most is less than the usual wait.',
  },
  waitSure: 'How sure is the usual wait?',
  addTier: `${capital(trade.carriage)} for larger orders`, anotherTier: 'Another step', tierLead: 'The last step that an order reaches holds.',
  tier: {
    title: `${capital(trade.carriage)} for larger orders`, one: 'A value or a mass is enough; with both, an order has to reach both.', value: 'From a value of', mass: 'From a mass of', carriage: capital(trade.carriage),
    needsFrom: 'Give a value or a mass from which it holds.', put: 'Put it down', done: `${capital(trade.carriage)} put down`, struck: `${capital(trade.carriage)} struck out`, from: (what: readonly string[]) => `from ${listed(what)}`, always: 'from the first piece',
  },
  paste: {
    title: 'Paste terms from a table', lead: 'Each row is one of them. The first row names the columns: name, carriage, free from, least order, least charge, wait, tax …', label: 'Rows', nameless: 'No column says whom a row is about. Name one of them Name or Supplier.',
    unread: (heads: readonly string[]) => `Not read: ${listed(heads)}.`, known: 'here already', fresh: 'new', terms: (n: number) => (n ? count(n, 'term') : 'no term'), wrong: (column: string, why: string) => `${column} is left out. ${why}`,
    put: (n: number) => (n === 1 ? 'Put the one down' : `Put all ${n} down`), done: (n: number) => `Terms of ${n} put down`,
  },
  strike: 'Strike out', struck: (name: string) => `${name} struck out`,
});

/** Whether a plan must take something, or must leave it. */
export const stance = {
  label: 'In a plan', options: { '': 'free', pinned: 'pinned', forbidden: 'forbidden' } satisfies Record<Stance | '', string>,
  quoteHint: 'Pinned: a plan takes this quote for the part. Forbidden: it takes another.',
  supplierHint: 'Pinned: what they quote is bought there. Forbidden: nothing is.', donorHint: 'Pinned: what it can give comes from it. Forbidden: nothing does.',
  said: { pinned: 'pinned in a plan', forbidden: 'forbidden in a plan' } satisfies Record<Stance, string>,
  saved: (how: string) => `In a plan: ${how}`,
};
