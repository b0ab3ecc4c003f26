/** Names of kinds, singular and plural: `early` and `maincrop` of `potato`, `potatoes`. */
export function kindsOf(words: readonly string[], one: string, many: string): readonly string[] {
  return words.flatMap((word) => [`${word} ${one}`, `${word} ${many}`]);
}
