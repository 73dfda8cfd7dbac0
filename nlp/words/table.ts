/** A table of words that holds nothing but what is put in it: looked up in a plain object, "constructor" would be found in every one. */
export const table = <T>(words: Readonly<Record<string, T>>): Readonly<Record<string, T>> => Object.assign(Object.create(null), words) as Readonly<Record<string, T>>;
