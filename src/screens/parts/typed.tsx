/** Forms whose answers outlive their page: each answer is a state that is kept as it is typed. */
import { type ReadonlySignal, signal } from "@preact/signals";
import { type ComponentChildren, createContext, Fragment, type FunctionComponent } from "preact";
import { useContext, useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Command } from "../../record/command/command.ts";
import { useHouse } from "./house.ts";
import { Key } from "./keys.tsx";
import { isAlike, readTyped, typedKey, waitingForReload, writeTyped } from "./typed-store.ts";
import { TYPED_WORDS } from "./words.typed.ts";
import { useWordsOf } from "./words-of.ts";

/** A form under the hand. */
interface Typing {
  /** Something that was typed before stands in the form again. */
  readonly brought: ReadonlySignal<boolean>;
  /** What stands in the place of an answer once its part of the form is drawn: what was typed, where it fits. */
  readonly begin: <T>(name: string, first: T, fits: (typed: unknown) => typed is T) => T;
  readonly put: (name: string, value: unknown) => void;
  readonly forget: () => void;
}

const beginTyping = (key: string, base: string): Typing => {
  const before = readTyped(key, base) ?? {};
  const brought = signal(false);
  const firsts = new Map<string, string>();
  let answers = before;
  let over = false;
  return {
    brought,
    begin: (name, first, fits) => {
      // A part that is drawn anew may begin with what was typed into it: that is not how it stood at first.
      if (!firsts.has(name)) firsts.set(name, JSON.stringify(first));
      const typed = answers[name];
      if (!fits(typed)) return first;
      if (name in before) brought.value = true;
      return typed;
    },
    put: (name, value) => {
      if (over) return;
      const { [name]: _, ...others } = answers;
      // What stands there as it did at first was not typed.
      answers = JSON.stringify(value) === firsts.get(name) ? others : { ...others, [name]: value };
      writeTyped(key, base, answers);
    },
    forget: () => {
      over = true;
      writeTyped(key, base, {});
    },
  };
};

const TypingContext = createContext<
  (Typing & { readonly round: number; readonly afresh: () => void }) | null
>(null);

/**
 * Around a form. What is in it may be typed into by `useTyped`, says by `Brought` that it was brought back, and
 * is forgotten by `useForget`.
 *
 * @param props.form name of the form, once on its page
 * @param props.base what the form is filled from, where answers typed over something else must not come back
 */
export const Typed = (props: {
  readonly form: string;
  readonly base?: string;
  readonly children: ComponentChildren;
}) => {
  const { form, base = "" } = props;
  const [round, setRound] = useState(0);
  const typing = useMemo(() => {
    const begun = beginTyping(typedKey(form), base);
    return {
      ...begun,
      round,
      afresh: () => {
        begun.forget();
        setRound((before) => before + 1);
      },
    };
    // What changes on record while somebody types is no other form.
  }, [form, round]);
  return (
    <TypingContext.Provider value={typing}>
      <Fragment key={`${form} ${round}`}>{props.children}</Fragment>
    </TypingContext.Provider>
  );
};

/** A form with `Typed` around it. */
export const withTyped =
  <P extends object>(nameOf: (props: P) => string, Form: FunctionComponent<P>): FunctionComponent<P> =>
  (props) => (
    <Typed form={nameOf(props)}>
      <Form {...props} />
    </Typed>
  );

/** Says that something was brought back, with the key that begins afresh. It stands inside the form. */
export const Brought = () => {
  const typing = useContext(TypingContext);
  const { say } = useHouse();
  const words = useWordsOf(TYPED_WORDS);
  const here = useRef<HTMLSpanElement>(null);
  const brought = typing?.brought.value === true;
  useEffect(() => {
    // What stands in a new screen from the beginning is not told to a screen reader by itself.
    if (brought) say(words.brought);
  }, [brought]);
  useEffect(() => {
    // The key is gone with the form that it stood in: the focus goes to the form that took its place, and not to
    // its first line, which would bring the keyboard up.
    const form = here.current?.parentElement;
    const first = form?.querySelector<HTMLElement>("h2, h3, fieldset") ?? form;
    if (first == null) return;
    first.tabIndex = -1;
    first.focus();
  }, []);
  if (typing === null || !brought) return typing?.round ? <span ref={here} hidden /> : null;
  return (
    <div class="keys two beside">
      <p>{words.brought}</p>
      <Key
        onPress={() => {
          typing.afresh();
          say(words.begun);
        }}
      >
        {words.afresh}
      </Key>
    </div>
  );
};

/**
 * A state of a form that is kept as it is typed; outside `Typed` a plain state.
 *
 * @param name once in its form; with the unit in it where the answer is a number in that unit
 * @param first what stands there at first
 * @param fits whether what was typed before may still stand there
 * @param optional names inside the answer that may be left out
 * @returns the answer, what takes another one, and what puts one that nobody typed
 */
export const useTyped = <T,>(
  name: string,
  first: T,
  fits: (before: T) => boolean = () => true,
  optional: readonly string[] = [],
): [T, (next: T | ((before: T) => T)) => void, (next: (before: T) => T) => void] => {
  const typing = useContext(TypingContext);
  const mayStand = (typed: unknown): typed is T => isAlike(typed, first, optional) && fits(typed as T);
  const [value, setValue] = useState<T>(() =>
    typing === null ? first : typing.begin(name, first, mayStand),
  );
  // Two answers within one touch, before the form is drawn again.
  const now = useRef(value);
  const put = (next: T) => {
    now.current = next;
    setValue(next);
  };
  return [
    value,
    (next) => {
      put(typeof next === "function" ? (next as (before: T) => T)(now.current) : next);
      typing?.put(name, now.current);
    },
    (next) => put(next(now.current)),
  ];
};

/** Forgets what was typed: it was kept, or left by a key that says so. */
export const useForget = (): (() => void) => {
  const typing = useContext(TypingContext);
  return () => typing?.forget();
};

/**
 * Writes down what was typed. Where the database goes away on the way, what was to be written waits until the
 * page is loaded again, and is written then: a form that came back beside it would be written twice.
 */
export const useKeeping = (): (<T>(write: () => Promise<T>) => Promise<T>) => {
  const forget = useForget();
  return async (write) => {
    const before = waitingForReload();
    const look = () => {
      if (waitingForReload() > before) forget();
    };
    // The page may be gone before there is an answer.
    addEventListener("pagehide", look);
    try {
      return await write();
    } finally {
      removeEventListener("pagehide", look);
      look();
    }
  };
};

/**
 * The two ways out of a form.
 *
 * @param onDone called once the form is left
 * @returns `close` leaves it as it is; `keep` writes, where there is anything to write, and leaves it then: what
 * cannot be written is told, and the form stays
 */
export const useWaysOut = (
  onDone: () => void,
): { readonly close: () => void; readonly keep: (commands: readonly Command[]) => Promise<void> } => {
  const house = useHouse();
  const forget = useForget();
  const keeping = useKeeping();
  const close = () => {
    forget();
    onDone();
  };
  return {
    close,
    keep: async (commands) => {
      const written = commands.length === 0 ? null : await keeping(() => house.write(...commands));
      if (written?.ok === false) house.tell(written.problem);
      else close();
    },
  };
};
