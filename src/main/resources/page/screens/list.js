/**
 * All screens. `path` is what stands in the address behind the trip, `roles` who has it in the
 * tabs, `load` fetches the module when it is first needed. A module exports `title()`, `view(place)`
 * and, if it has something to do, `enter(place)` and `leave()`.
 */
export const SCREENS = [
  { path: "home", name: "Trips", roles: [], load: () => import("./home.js") },
  { path: "new", name: "New trip", roles: [], load: () => import("./start.js") },
  { path: "kept", name: "Kept card", roles: [], load: () => import("./kept.js") },
  { path: "card", name: "Your card", tab: true, roles: ["hiker"], firstFor: "hiker", load: () => import("./card.js") },
  { path: "me", name: "About you", tab: true, roles: ["hiker"], load: () => import("./me.js") },
  { path: "loads", name: "Loads", tab: true, roles: ["leader", "hiker", "viewer"], load: () => import("./loads.js") },
  { path: "people", name: "People", tab: true, roles: ["leader"], load: () => import("./people.js") },
  { path: "gear", name: "Shared gear", tab: true, roles: ["leader"], load: () => import("./gear.js") },
  { path: "needs", name: "Needs", tab: true, roles: ["leader"], load: () => import("./needs.js") },
  { path: "rules", name: "Rules", tab: true, roles: ["leader"], load: () => import("./rules.js") },
  { path: "change", name: "Change of plans", tab: true, roles: ["leader"], load: () => import("./change.js") },
  { path: "weigh", name: "Weigh-in", tab: true, roles: ["leader", "hiker"], load: () => import("./weigh.js") },
  { path: "ready", name: "Leaving", tab: true, roles: ["leader", "hiker", "viewer"], load: () => import("./ready.js") },
  { path: "cards", name: "Cards", tab: true, roles: ["leader", "viewer"], load: () => import("./cards.js") },
  { path: "links", name: "Links", tab: true, roles: ["leader"], load: () => import("./links.js") },
  { path: "history", name: "History", tab: true, roles: ["leader"], load: () => import("./history.js") },
];

/** The screen a role arrives at. */
export function firstScreen(role) {
  const own = SCREENS.find((screen) => screen.firstFor === role);
  return own?.path ?? "loads";
}
