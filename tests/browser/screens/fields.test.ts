import { afterAll, beforeAll, expect, it } from "vitest";
import { type OnPhone, onPhone } from "./on-phone.ts";

let phone: OnPhone;
beforeAll(async () => {
  phone = await onPhone();
});
afterAll(() => phone.close());

it("adds a field of a new farm by its name alone, and lists it under the farm", async () => {
  await phone.goTo("#/fields");
  await phone.touch("Add a field");
  await phone.write("What is it called?", "Top Field");
  await phone.touch("another farm");
  await phone.write("Name of the farm", "Hollow Lane");
  await phone.touch("Back to the list");
  await phone.reads("Hollow Lane");
  await phone.reads("not measured yet");
});

it("says when a field of that name is here already", async () => {
  await phone.touch("Add a field");
  await phone.write("What is it called?", "top field");
  await phone.touch("is here already. Go there");
  // The whole field is a strip by itself: nobody has to think of strips before there are any.
  await phone.reads("whole field");
});

it("adds a strip, corrects it, and says what was done there", async () => {
  await phone.touch("Add a strip");
  await phone.write("Name of the strip", "north half");
  await phone.touch("straw left");
  await phone.touch("Done");
  await phone.reads("straw left");
  await phone.touch("Change a strip");
  await phone.touch("north half");
  await phone.write("Rep", "one");
  await phone.touch("Done");
  await phone.reads("That is not a number.");
  await phone.write("Rep", "2");
  await phone.touch("Done");
  await phone.reads("rep 2");
});

it("asks once before it deletes a field, and says how it comes back", async () => {
  await phone.touch("Delete this field");
  await phone.reads("30 days under Deleted records");
  await phone.touch("Keep it");
  await phone.touch("Delete this field");
  await phone.touch("Yes, delete it");
  await phone.reads("No field yet.");
  expect(await phone.chromium.run(() => location.hash)).toBe("#/fields");
});

it("renames a farm, and asks once before two farms have one name", async () => {
  await phone.goTo("#/fields/new");
  await phone.write("What is it called?", "Long Bottom");
  await phone.touch("another farm");
  await phone.write("Name of the farm", "Brook End");
  await phone.touch("Back to the list");
  await phone.reads("Long Bottom");
  await phone.chromium.page.getByRole("button", { name: "Rename Brook End" }).tap();
  await phone.write("Name of the farm", "hollow lane");
  await phone.touch("Done");
  await phone.reads("Another farm is called hollow lane already.");
  await phone.write("Name of the farm", "Brook Farm");
  await phone.touch("Done");
  await phone.reads("Brook Farm");
});

it("keeps rows, soil and crop, and says plainly what cannot be a direction", async () => {
  await phone.touch("Long Bottom");
  await phone.touch("Direction of the rows");
  await phone.touch("in degrees");
  await phone.write("Degrees from true north, 0 to 360", "400");
  await phone.touch("Done");
  await phone.reads("A direction lies between 0 and 360 degrees.");
  await phone.write("Degrees from true north, 0 to 360", "200");
  await phone.touch("Done");
  await phone.reads("20° from true north (north-north-east – south-south-west)");
  await phone.touch("Soil");
  await phone.touch("clay loam");
  await phone.touch("Done");
  await phone.touch("Crop of the harvest");
  await phone.touch("none of these");
  await phone.write("In your own words", "buckwheat");
  await phone.touch("Done");
  await phone.reads("buckwheat");
  await phone.chromium.reload();
  await phone.reads("buckwheat");
  await phone.reads("clay loam");
});
