import { count } from './format';

/** The vehicle being done and its donors. */
export const vehicles = {
  title: 'Vehicles and donors',
  done: 'Being done', donors: 'Donors', noDonor: 'none yet', noName: 'no name yet',
  name: 'Name', year: 'Year', identity: 'Chassis, engine or body number', remark: 'Remark',
  addDonor: 'Add a donor', addVehicle: 'Add the vehicle', newDonor: 'Donor', made: (name: string) => `${name} added`, needsName: 'Give it a name, as you call it.',
  wrongYear: 'Give the year in figures, like 1957.', saved: (what: string) => `${what} put down`,
  painted: 'Paint', isPainted: 'painted', notPainted: 'not painted yet', paintedHint: 'What goes on after the paint waits for it in Refit.',
  strike: 'Strike out', struck: (name: string) => `${name} struck out`,
  none: { first: 'No vehicle yet.', then: 'A name is enough. Year and numbers can follow when you find them.' },
  assemblies: (n: number) => count(n, 'assembly', 'assemblies'),
  put: 'Put down',
  costs: {
    cash: 'What it costs', cashHint: 'The whole vehicle, with bringing it home.', sold: 'Surplus sold for', soldHint: 'What was not needed of it, and what is left as scrap.', really: 'What it really costs',
    spent: 'It is paid for: a plan counts nothing for it.', here: 'Is it here?', notYet: 'not yet', bought: 'here already', wrongMoney: 'Give a sum, like 400 or 399.50.',
    soldAll: 'surplus sold, all of it', taken: 'Taken from it', takenNone: 'nothing yet', left: 'Left on it', leftNone: 'nothing that is listed',
    leftHint: 'What is quoted from it or listed in its assemblies, and not chosen or taken off.', chosen: 'chosen', off: 'Taken off', offNow: (name: string) => `${name}: taken off`, onNow: (name: string) => `${name}: still on it`, soldFor: (sum: string) => `sold for ${sum}`, soldLine: 'Sold for',
  },
};
