/** The number at the app's picture on the home screen. */

/**
 * Shows a number at the app's picture, or takes it away. Only installed apps have one; elsewhere, and where
 * the person forbids it, nothing happens.
 *
 * @param count 0 takes it away
 * @example
 * showBadge(2); // two rings wait for a reading
 */
export const showBadge = (count: number): void => {
  if (typeof navigator === "undefined" || typeof navigator.setAppBadge !== "function") return;
  const shown = count > 0 ? navigator.setAppBadge(count) : navigator.clearAppBadge();
  shown.catch(() => undefined);
};
