/** Groups of rules, each under its heading. */
import type { RuleGroup } from "./test-words.ts";

export const Rules = ({ groups }: { readonly groups: readonly RuleGroup[] }) => (
  <>
    {groups.map(({ title, says }) => (
      <section key={title}>
        <h2>{title}</h2>
        <ul class="help-rules">
          {says.map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      </section>
    ))}
  </>
);
