import { expect, it } from "vitest";
import { linesHead } from "../../src/exchange/format/views/line-tables.ts";
import { isDemoId } from "../../src/record/demo-mark.ts";
import type { Observation } from "../../src/record/kinds/observation.ts";
import { type RecordState, shown } from "../../src/record/record.ts";
import { DEMO_EDITION, demoCommands } from "../../src/screens/demo/commands.ts";
import { farmWords } from "../../src/screens/demo/words.farm.ts";
import { TRADE_WORDS } from "../../src/screens/parts/trade.ts";
import { applyCommands } from "../../src/store/write.ts";
import { rowsOf } from "../unit/exchange/view-samples.ts";
import { addLines, copyOf, device, onlyPart, recordsOf } from "./archive-samples.ts";
import { lineBody, need, newId, sampleLine, write } from "./store-samples.ts";

it("a copy leaves the example farm out, but for what one's own records rest on", async () => {
  const connection = await device();
  await addLines(connection, 2, 3);
  const before = await copyOf(connection);
  const round = { edition: DEMO_EDITION, round: 0 };
  const words = farmWords(TRADE_WORDS["uk-ie"]);
  for (const step of demoCommands({ round, nowMs: Date.now(), words }))
    need(await applyCommands(connection, step));
  const beside = await copyOf(connection);
  expect(beside.recordsDigest).toBe(before.recordsDigest);
  expect(beside.records).toBe(before.records);

  const found = (await recordsOf(connection)).find(({ id, revs }) => {
    const body = revs[0]?.body as Partial<Observation> | undefined;
    return isDemoId(id) && body?.type === "line" && body.spot === undefined;
  });
  const example = found === undefined ? undefined : shown(found as RecordState<"observation">)?.body;
  if (example?.type !== "line") throw new Error("the example farm has no line");
  const { visit, field, strip, rope } = example;
  const own = newId("observation");
  need(
    await applyCommands(connection, [write(own, { ...lineBody(sampleLine()), visit, field, strip, rope })]),
  );
  // The line, and with it visit, field, farm, strip and rope.
  const resting = await copyOf(connection);
  expect(resting.records).toBe(before.records + 6);
  // Whoever opens the file is told; files in the zip are not compressed.
  const says = "the example farm, which is invented";
  expect(await onlyPart(beside).text()).not.toContain(says);
  expect(await onlyPart(resting).text()).toContain(says);
  // And the table says it of this line alone, so that nobody takes it for one that was counted on a farm.
  const text = await onlyPart(resting).text();
  const table = text.slice(text.indexOf(linesHead) + linesHead.length);
  const rows = rowsOf(linesHead, table.split("\r\n").slice(0, 3).join("\r\n"));
  expect(rows.filter(({ example: is }) => is === "yes").map(({ line }) => line)).toEqual([own]);
  expect(rows.filter(({ example: is }) => is === "no")).toHaveLength(2);
  connection.close();
});
