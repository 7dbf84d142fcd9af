/** Putting the app on the home screen, where its records are safest. */

/** The browser offers to install. It can be taken up once, out of a touch. */
export interface InstallOffer {
  /** Shows the browser's own question. `failed` when it would not, for example without a touch. */
  ask(): Promise<"accepted" | "dismissed" | "failed">;
}

// The event of Chromium's browsers; in no standard, so no typing brings it.
interface InstallPromptEvent extends Event {
  prompt(): Promise<{ readonly outcome: "accepted" | "dismissed" }>;
}

const isInstallPrompt = (event: Event): event is InstallPromptEvent =>
  "prompt" in event && typeof event.prompt === "function";

const iosStandalone = (): boolean | null =>
  typeof navigator !== "undefined" && "standalone" in navigator && typeof navigator.standalone === "boolean"
    ? navigator.standalone
    : null;

/**
 * Whether this page runs as the installed app and not in a browser tab.
 *
 * @example
 * if (!isInstalled()) showHowToInstall();
 */
export const isInstalled = (): boolean =>
  iosStandalone() === true ||
  (typeof matchMedia === "function" &&
    ["standalone", "fullscreen", "minimal-ui"].some((mode) => matchMedia(`(display-mode: ${mode})`).matches));

/**
 * Whether this is a browser tab on an iPhone or iPad. Records written there do not move into the installed
 * app by themselves, which has to be said before they are many. Told by `navigator.standalone`, which only
 * those have, and not by the name of the browser.
 */
export const isIosTab = (): boolean => iosStandalone() === false && !isInstalled();

/**
 * Waits for the browser's offer to install and keeps it for later instead of letting the browser show it
 * in the middle of a test. Call it at the very start of the app: the offer comes once and early.
 *
 * @param onOffer an offer, or null when it was taken up or is gone
 */
export const watchInstallOffer = (
  onOffer: (offer: InstallOffer | null) => void,
  signal: AbortSignal,
): void => {
  if (typeof window === "undefined" || signal.aborted) return;
  window.addEventListener(
    "beforeinstallprompt",
    (event) => {
      if (!isInstallPrompt(event)) return;
      event.preventDefault();
      onOffer({
        ask: async () => {
          onOffer(null); // the browser answers one event only once
          try {
            return (await event.prompt()).outcome;
          } catch {
            return "failed";
          }
        },
      });
    },
    { signal },
  );
  window.addEventListener("appinstalled", () => onOffer(null), { signal });
};
