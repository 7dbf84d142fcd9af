import { DEMO_MARK } from "../../record/demo-mark.ts";

/**
 * The text for a person who opens the zip.
 *
 * @param demo whether records of the example farm go along, because somebody's own rest on them
 */
export const readmeText = (appVersion: string, day: string, demo: boolean): string =>
  [
    "Records of ground cover, worms and soak-in, written by Mulchmark",
    "",
    `Written on ${day} by version ${appVersion}.`,
    "",
    ...(demo
      ? [
          "Some of these records belong to the example farm, which is invented: own records",
          `rest on them. Their ids go on with ${DEMO_MARK} after the first hyphen.`,
          "Under view/ whatever was measured there has yes (on maps true) at example.",
          "",
        ]
      : []),
    "To bring these records into another phone or computer, open Mulchmark there, go to",
    "Send & back up, and choose this zip file as it is. Bringing it in twice does no harm.",
    "",
    "view/lines.csv                one row a line, with counts: opens in a spreadsheet",
    "view/marks.csv                one row an answer at a mark",
    "view/lines.geojson            where the lines lie: opens in a map program",
    "view/rings.csv                one row a ring test, with the sizes of the ring",
    "view/ring-readings.csv        one row a reading of a ring, or what happened to it",
    "view/holes.csv                one row a hole, with counts of worms",
    "view/hole-entries.csv         one row an entry at a hole",
    "view/rings-and-holes.geojson  where the rings and holes are: opens in a map program",
    "view/notes.csv                one row a note, with its words and where it was written",
    "records.ndjson                all records as they were written down: this is what counts",
    "photos/                       pictures, named by the SHA-256 of their bytes",
    "manifest.json                 what this archive holds, with sizes and digests",
    "",
    "Changing a file under view/ changes no record: those are copies for reading.",
    "",
  ].join("\r\n");
