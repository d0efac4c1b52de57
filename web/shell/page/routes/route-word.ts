import type { Certainty, CostView, Route } from '../../bridge/protocol';
import { words } from '../words';
import type { Confidence } from '../words/confidence';
import type { RouteName } from '../words/routes';

const names: Record<Route, RouteName> = {
  'use-again': 'UseAgain', 'repair-here': 'RepairHere', 'send-out': 'SendOut', exchange: 'Exchange', buy: 'Buy', kit: 'Kit', donor: 'Donor', irreplaceable: 'Irreplaceable',
};

/** The eight routes in their order. */
export const ROUTES_IN_ORDER = Object.keys(names) as Route[];

export function routeWord(route: Route): string {
  return words().routes.name[names[route]];
}

/** The first route that is left for the part and that nobody has quoted yet. */
export function unusedRoute(view: CostView): Route {
  return view.left.find((route) => !view.quotes.some((quote) => quote.route === route)) ?? view.left[0] ?? 'buy';
}

const confidences: Record<Certainty, Confidence> = { sure: 'sure', about: 'about', 'wild-guess': 'wild', starting: 'wild' };

export function confidenceOf(certainty: Certainty | undefined): Confidence {
  return certainty ? confidences[certainty] : 'about';
}

export function certaintyOf(confidence: Confidence): Certainty {
  return confidence === 'wild' ? 'wild-guess' : confidence;
}
