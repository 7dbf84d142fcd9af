import type { RecordId } from "../../record/ids.ts";
import type { Kit } from "../../record/kinds/kit.ts";
import { BottleForm } from "./bottle-form.tsx";
import type { KitItem } from "./kit-list.ts";
import { RingForm } from "./ring-form.tsx";
import { RopeForm } from "./rope-form.tsx";
import { RulerForm } from "./ruler-form.tsx";
import { TemplateForm } from "./template-form.tsx";

/** The form for a new thing of a type. */
export const NewForm = (props: { readonly type: Kit["type"]; readonly onDone: () => void }) => {
  switch (props.type) {
    case "rope":
      return <RopeForm onDone={props.onDone} />;
    case "ring":
      return <RingForm onDone={props.onDone} />;
    case "hole-template":
      return <TemplateForm onDone={props.onDone} />;
    case "bottle":
      return <BottleForm onDone={props.onDone} />;
    case "ruler":
      return <RulerForm onDone={props.onDone} />;
  }
};

/** The form that corrects a thing. */
export const CorrectForm = (props: {
  readonly item: Pick<KitItem, "body"> & { readonly id: RecordId<"kit"> };
  readonly onDone: () => void;
}) => {
  const { item, onDone } = props;
  const { id, body } = item;
  switch (body.type) {
    case "rope":
      return <RopeForm rope={{ id, rope: body }} onDone={onDone} />;
    case "ring":
      return <RingForm ring={{ id, ring: body }} onDone={onDone} />;
    case "hole-template":
      return <TemplateForm template={{ id, template: body }} onDone={onDone} />;
    case "bottle":
      return <BottleForm bottle={{ id, bottle: body }} onDone={onDone} />;
    case "ruler":
      return <RulerForm ruler={{ id, ruler: body }} onDone={onDone} />;
  }
};
