/**
 * The note of the example farm on screens that must be there at once: its words are loaded only where they are
 * needed, and their room is kept meanwhile, so that nothing moves under a thumb.
 */
import { isDemoId } from "../../record/demo-mark.ts";
import { lazyPart } from "../parts/lazy-part.tsx";

const Note = lazyPart(async () => (await import("./demo-note.tsx")).DemoNote);
const Tag = lazyPart(async () => (await import("./demo-note.tsx")).DemoTag);

interface Of {
  readonly id: string | null | undefined;
}

/** `DemoNote`, later. */
export const DemoPlace = ({ id }: Of) =>
  id === null || id === undefined || !isDemoId(id) ? null : (
    <div class="demo-place">
      <Note id={id} />
    </div>
  );

/** `DemoTag`, later: a line of its own in a row. */
export const DemoTagPlace = ({ id }: Of) =>
  id === null || id === undefined || !isDemoId(id) ? null : (
    <small class="demo-tag-place">
      <Tag id={id} />
    </small>
  );
