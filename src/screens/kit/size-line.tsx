import type { Unit } from "../../record/units.ts";
import { NumberLine } from "../parts/number-line.tsx";
import type { Measured } from "./measured.ts";

/** A line for one size of the kit. */
export const SizeLine = (props: {
  readonly label: string;
  readonly hint?: string;
  readonly unit: Unit;
  readonly of: Measured;
  readonly tried: boolean;
}) => {
  const { of, hint, ...line } = props;
  return (
    <NumberLine
      {...line}
      {...(hint === undefined ? {} : { hint })}
      draft={of.draft}
      onDraft={of.onDraft}
      state={of.state}
    />
  );
};
