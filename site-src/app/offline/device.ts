// Which kind of browser this is on which kind of device: the ways to the home screen, and what is
// kept for how long, differ by them.

/** Keys of the catalogue below "home.": what a family has to do to open Sutur by an icon. */
export const DEVICES = ['ios', 'mac', 'android', 'android-firefox', 'computer', 'firefox'] as const;
export type Device = (typeof DEVICES)[number];

/** What Chromium offers in place of steps (beforeinstallprompt); it can be shown once. */
export interface Install extends Event {
  prompt(): Promise<unknown>;
}

/**
 * WebKit on Apple's systems, whatever the browser is called: it alone has events for gestures of a
 * trackpad or two fingers. WebKitGTK has none. So it is not the name that decides.
 */
const apple = () => 'GestureEvent' in window;

/** Firefox's engine: its own properties are left to it alone. */
export const gecko = () => CSS.supports('-moz-appearance', 'none');

/** Held in the hand and touched. An iPad says that it is a Mac, but can be touched. */
const handheld = () => matchMedia('(hover: none) and (pointer: coarse)').matches;

export function device(): Device {
  if (apple()) return navigator.maxTouchPoints > 1 ? 'ios' : 'mac';
  if (gecko()) return handheld() ? 'android-firefox' : 'firefox';
  return handheld() ? 'android' : 'computer';
}

/** Whether this page was opened by an icon of the home screen, as an app of its own. */
export const installed = () =>
  matchMedia('(display-mode: standalone)').matches ||
  (navigator as { standalone?: boolean }).standalone === true;

/**
 * Whether the browser clears what was kept here after seven days of its use without a visit
 * (Intelligent Tracking Prevention; webkit.org, "Full Third-Party Cookie Blocking and More", March
 * 2020, cited from memory): WebKit on Apple's systems, for all that scripts store. What was added to
 * the home screen counts its own days of use and is not concerned; nor is storage that is
 * persistent, which is for the caller to know.
 */
export const clearsAfterWeek = () => apple() && !installed();
