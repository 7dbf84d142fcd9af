/** The marked spots of a field: found again every season. */
import { useHouse } from "../parts/house.ts";
import { LinkKey } from "../parts/keys.tsx";
import { useLive } from "../parts/live.ts";
import { href } from "../parts/route.ts";
import type { SameField } from "../parts/same-field.ts";
import { useWordsOf } from "../parts/words-of.ts";
import { DETAILS_WORDS } from "./words.details.ts";

export const Places = ({ same }: { readonly same: SameField }) => {
  const { records } = useHouse();
  const says = useWordsOf(DETAILS_WORDS);
  const { field, ids } = same;
  const spots = useLive(
    async () => (await Promise.all(ids.map((id) => records.list({ field: id, kind: "spot" })))).flat(),
    [ids.join(" ")],
  );
  return (
    <section class="ruled">
      <h2>{says.spots}</h2>
      {spots !== undefined && spots.length === 0 ? <p>{says.noSpots}</p> : null}
      <ul class="rows">
        {(spots ?? []).map(({ id, body }) => {
          const kind = says.kinds[body.edge === undefined ? (body.oldGrass ? "old-grass" : "spot") : "edge"];
          return (
            <li key={id}>
              <a class="row" href={href({ at: "spot", field: field.id, spot: id })}>
                <span>
                  <b>{body.name === "" ? kind : body.name}</b>
                  <small>
                    {[
                      ...(body.name === "" ? [] : [kind]),
                      ...(body.position === null ? [says.withoutPosition] : []),
                    ].join(" · ")}
                  </small>
                </span>
              </a>
            </li>
          );
        })}
      </ul>
      <div class="after-writing">
        <LinkKey to={href({ at: "spot", field: field.id, spot: "new" })}>{says.addSpot}</LinkKey>
      </div>
    </section>
  );
};
