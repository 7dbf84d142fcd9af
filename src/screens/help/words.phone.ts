import type { RuleGroup } from "./test-words.ts";

/** Words of the two pages about the phone itself. */
export const phoneHelp = () => ({
  keeping: {
    lead: "Everything that you measure lies in this browser, on this device, and nowhere else. Nothing is sent anywhere. So nobody but you can bring it back.",
    groups: [
      {
        title: "How records get lost",
        says: [
          "A browser may clear away what a page has stored when the device runs short of room. It asks nobody.",
          "Some browsers do so after a week or some weeks in which the page was not opened, unless it was put on the home screen.",
          "“Clear browsing data”, “Clear history and website data” and clean-up apps delete the records too.",
          "A private window forgets them when it is closed.",
          "Taking the app off the home screen can delete them. So can a repair, a new phone, or a phone in the river.",
        ],
      },
      {
        title: "Put it on the home screen",
        says: [
          "Then it opens without signal like any app, and most browsers promise to keep what it has stored. Settings, under This device, says whether this one does.",
          "Android: open the browser’s menu, then Install app or Add to home screen.",
          "iPhone and iPad: touch Share, then Add to Home Screen. Do it before you measure: the app on the home screen does not see what was recorded in a tab. What is in the tab already comes over by a copy: make it there, bring it in here.",
          "Open the app once with signal after that. It is ready for the field when it opens with the signal switched off.",
        ],
      },
      {
        title: "Copies are the only backup",
        says: [
          "Send & back up makes a file that holds everything, or several when there are many photos: keep those together. Each is read back and compared before the app says that it is made.",
          "Make one at the end of every day, and let it leave the phone: to another phone, a computer, a stick.",
          "A copy that lies on the same phone goes with the phone.",
          "Try it once: bring the file in on a second device and look at your fields there. Bringing in never deletes a mark of either.",
          "A copy holds names, fields and positions. Hand it only to people who may have them.",
        ],
      },
    ] satisfies readonly RuleGroup[],
  },
  asleep: {
    lead: "A page sleeps when the phone is locked. Readings taken so far are safe, but a sleeping page does nothing.",
    groups: [
      {
        title: "Locked, it cannot",
        says: [
          "ring, vibrate or show that a reading is due",
          "take a position",
          "keep the moment of a reading that nobody touches",
        ],
      },
      {
        title: "What goes on all the same",
        says: [
          "Rings, mustard water and sorting go by the clock, not by the page. When it wakes, all times are right.",
          "A call, the camera, another app or a page that the phone threw out: open Mulchmark and it stands where you left it.",
          "Every ring shows the clock time of its next reading. With a watch you can read by that alone, and type the time in later.",
        ],
      },
      {
        title: "So that it can ring",
        says: [
          "While a ring runs the screen stays on and is dimmed. Do not lock the phone, and stay in Mulchmark.",
          "Some phones refuse that while they save their battery. Rings and holes say so then, a line does not: read by the clock.",
          "A ringing phone needs sound switched on and one touch on the screen beforehand. A silent switch silences it.",
          "A running screen eats the battery: bring a power bank, and keep the phone out of the sun.",
        ],
      },
    ] satisfies readonly RuleGroup[],
  },
});
