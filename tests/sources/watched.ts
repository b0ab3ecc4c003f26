/** A copied file whose every figure is to be compared: what is read of `tree` is noted, and `unread` names the rest. */
export type Watched<Tree> = { readonly tree: Tree; readonly unread: () => readonly string[] };

/** Keys that say where figures come from and are no figures. */
const ABOUT = new Set(["source", "status"]);

const isTree = (value: unknown): value is object => typeof value === "object" && value !== null;

/** The paths of all figures and words below a value, `block.row.0.days`, without those of ABOUT. */
function leaves(value: unknown, path: string): readonly string[] {
  if (!isTree(value)) return [path];
  return Object.entries(value)
    .filter(([key]) => !ABOUT.has(key))
    .flatMap(([key, under]) => leaves(under, path === "" ? key : `${path}.${key}`));
}

/** A tree that notes which of its leaves were read. */
export function watched<Tree extends object>(tree: Tree): Watched<Tree> {
  const read = new Set<string>();
  const watch = <Part extends object>(part: Part, path: string): Part =>
    new Proxy(part, {
      get(target, key, receiver) {
        const value: unknown = Reflect.get(target, key, receiver);
        if (typeof key === "symbol" || !Object.hasOwn(target, key)) return value;
        const under = path === "" ? key : `${path}.${key}`;
        if (isTree(value)) return watch(value, under);
        read.add(under);
        return value;
      },
    });
  return {
    tree: watch(tree, ""),
    unread: () => leaves(tree, "").filter((path) => !read.has(path)),
  };
}

/** The unread leaves that no entry of a list covers, and the entries that cover none: both are to be empty. */
export function unlisted(
  unread: readonly string[],
  listed: Readonly<Record<string, string>>,
): { readonly missing: readonly string[]; readonly idle: readonly string[] } {
  const covers = (entry: string, path: string) => path === entry || path.startsWith(`${entry}.`);
  const entries = Object.keys(listed);
  return {
    missing: unread.filter((path) => !entries.some((entry) => covers(entry, path))),
    idle: entries.filter((entry) => !unread.some((path) => covers(entry, path))),
  };
}
