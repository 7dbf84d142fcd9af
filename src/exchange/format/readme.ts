/** The text for a person who opens the zip. */
export const readmeText = (appVersion: string, day: string): string =>
  [
    "Records of ground cover, worms and soak-in, written by Mulchmark",
    "",
    `Written on ${day} by version ${appVersion}.`,
    "",
    "To bring these records into another phone or computer, open Mulchmark there, go to",
    "Send & back up, and choose this zip file as it is. Bringing it in twice does no harm.",
    "",
    "view/lines.csv       one row a line, with counts: opens in a spreadsheet",
    "view/marks.csv       one row an answer at a mark",
    "view/lines.geojson   where the lines lie: opens in a map program",
    "records.ndjson       all records as they were written down: this is what counts",
    "photos/              pictures, named by the SHA-256 of their bytes",
    "manifest.json        what this archive holds, with sizes and digests",
    "",
    "Changing a file under view/ changes no record: those are copies for reading.",
    "",
  ].join("\r\n");
