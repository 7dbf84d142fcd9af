/** A form that opens in the place of its key, and the focus that goes along with it. */
import type { ComponentChildren, RefObject } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { stand } from "./keep-focus.ts";
import { Key } from "./keys.tsx";

/**
 * Moves the focus into a form that opens in the place of its key, and back to the key when it closes. To the
 * form as a whole and not to its first line: on a phone that would bring the keyboard up.
 *
 * @param open nothing is moved for what stands open from the beginning
 * @returns for the form, and for what holds its key
 */
export const useFocusHere = <F extends HTMLElement, K extends HTMLElement>(
  open: boolean,
): readonly [RefObject<F | null>, RefObject<K | null>] => {
  const form = useRef<F>(null);
  const key = useRef<K>(null);
  const was = useRef(open);
  useEffect(() => {
    if (was.current === open) return;
    was.current = open;
    if (open) {
      if (form.current !== null) stand(form.current);
    } else [...(key.current?.querySelectorAll<HTMLElement>("button") ?? [])].at(-1)?.focus();
  }, [open]);
  return [form, key];
};

/** A key, and the form that it opens in its place. */
export const OpensHere = (props: {
  readonly label: string;
  readonly open: boolean;
  readonly onOpen: () => void;
  readonly form: () => ComponentChildren;
  /** Keys before it. */
  readonly before?: ComponentChildren;
  readonly class?: string;
}) => {
  const [form, key] = useFocusHere<HTMLFieldSetElement, HTMLDivElement>(props.open);
  return props.open ? (
    <fieldset class="opens-here" ref={form} tabIndex={-1} aria-label={props.label}>
      {props.form()}
    </fieldset>
  ) : (
    <div class={props.class ?? "keys two beside"} ref={key}>
      {props.before}
      <Key onPress={props.onOpen}>{props.label}</Key>
    </div>
  );
};
