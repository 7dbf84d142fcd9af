/** The jobs with files, each under the locks that it needs. */
import { ok, type Result } from "../../record/result.ts";
import type { Connection } from "../../store/connection.ts";
import { listImports, removeImport } from "../../store/staging.ts";
import { bringIn, finishImports } from "./bring-in.ts";
import type { BroughtIn, Preview, Watch } from "./reports.ts";
import { stageFile } from "./stage.ts";
import { type Origin, type Written, writeArchive } from "./write.ts";

/** Held only while an archive is written or a file is brought in; touches never wait for it. */
const FILES_LOCK = "mulchmark-files";
/** Held as long as somebody may still say yes to a staged file; let go when the window dies. */
const ownerLock = (id: string): string => `mulchmark-import-${id}`;

/** How often an archive is begun anew when a photo was erased while it was written. */
const ATTEMPTS = 3;

/** Jobs of one window. */
export interface FileJobs {
  /** See `writeArchive`. */
  readonly makeCopy: (origin: Origin, watch: Watch) => Promise<Result<Written>>;
  /** See `stageFile`. A file that is refused leaves nothing behind. */
  readonly stage: (id: string, file: File, watch: Watch) => Promise<Result<Preview>>;
  /** See `bringIn`. */
  readonly bringIn: (id: string, onProgress: Watch["onProgress"]) => Promise<Result<BroughtIn>>;
  /** Forgets a staged file; records stay as they are. */
  readonly leave: (id: string) => Promise<Result<undefined>>;
  /** Finishes what was accepted, and forgets files that were staged in windows that are gone. */
  readonly finish: (onProgress: Watch["onProgress"]) => Promise<Result<readonly BroughtIn[]>>;
}

/** The jobs over a connection. */
export const fileJobs = (connection: Connection): FileJobs => {
  const { locks } = navigator;
  const owned = new Map<string, () => void>();
  const own = (id: string): Promise<void> =>
    new Promise((held, lost) => {
      locks
        .request(ownerLock(id), () => {
          held();
          return new Promise<void>((release) => owned.set(id, release));
        })
        .catch(lost);
    });
  const disown = (id: string): void => {
    owned.get(id)?.();
    owned.delete(id);
  };
  const leave = async (id: string): Promise<Result<undefined>> => {
    const removed = await removeImport(connection, id);
    disown(id);
    return removed;
  };

  return {
    leave,
    makeCopy: (origin, watch) =>
      locks.request(FILES_LOCK, async () => {
        for (let attempt = 1; ; attempt++) {
          const written = await writeArchive(connection, origin, watch);
          const again = !written.ok && written.problem.code === "exchange/changed-meanwhile";
          if (!again || attempt === ATTEMPTS) return written;
        }
      }),
    stage: async (id, file, watch) => {
      await own(id);
      const staged = await stageFile(connection, id, file, watch);
      if (!staged.ok) await leave(id);
      return staged;
    },
    bringIn: async (id, onProgress) => {
      const brought = await locks.request(FILES_LOCK, () => bringIn(connection, id, onProgress));
      disown(id);
      return brought;
    },
    finish: async (onProgress) => {
      const finished = await locks.request(FILES_LOCK, () => finishImports(connection, onProgress));
      if (!finished.ok) return finished;
      const imports = await listImports(connection);
      if (!imports.ok) return imports;
      for (const { id, state } of imports.value) {
        if (state !== "staged") continue;
        const removed = await locks.request(ownerLock(id), { ifAvailable: true }, (lock) =>
          lock === null ? ok(undefined) : removeImport(connection, id),
        );
        if (!removed.ok) return removed;
      }
      return finished;
    },
  };
};
