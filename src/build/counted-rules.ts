/** A rule, a declaration or a comment of a style sheet as PostCSS hands it over, as far as it is used here. */
interface Node {
  selector?: string;
  params?: string;
  prop?: string;
  value?: string;
  nodes?: Node[] | undefined;
  clone(): Node;
}

/** A rule that begins with `@`. */
interface AtRule extends Node {
  params: string;
  replaceWith(...nodes: Node[]): unknown;
  error(message: string): Error;
}

/** A plugin of PostCSS, as far as it is used here. */
export interface CountedRules {
  postcssPlugin: string;
  AtRule: { for(rule: AtRule): void };
}

/**
 * Lets a style sheet count, which CSS cannot: `@for $n from 2 to 16 { .span-$n { … } }` or `@for $n in 50 75 100 { … }` stands
 * for its rules once for each number, in that order. Throws, with file and line, where the numbers cannot be read.
 */
export function countedRules(): CountedRules {
  return {
    postcssPlugin: 'counted-rules',
    AtRule: {
      for(rule) {
        const [, name, counted] = /^(\$\w+) ((?:from|in) .+)$/.exec(rule.params.trim()) ?? [];
        const numbers = counted ? numbersIn(counted) : [];
        if (numbers.length === 0)
          throw rule.error(
            `@for ${rule.params}: "$n from 1 to 8", "$n from 2 to 16 step 2" or "$n in 50 75 100" can stand there`,
          );
        const body = rule.nodes ?? [];
        rule.replaceWith(
          ...numbers.flatMap((number) => body.map((node) => numbered(node.clone(), name, String(number)))),
        );
      },
    },
  };
}

/** A rule, and all in it, with the number in the place of its name. */
function numbered(node: Node, name: string, number: string): Node {
  for (const part of ['selector', 'params', 'prop', 'value'] as const) {
    const text = node[part];
    if (text !== undefined) node[part] = text.replaceAll(name, number);
  }
  node.nodes?.forEach((inner) => numbered(inner, name, number));
  return node;
}

/**
 * The numbers that are counted; none where they cannot be read.
 *
 * @example numbersIn('from 2 to 6 step 2') // [2, 4, 6]
 */
export function numbersIn(counted: string): number[] {
  const listed = /^in ((?:\d+ ?)+)$/.exec(counted);
  if (listed) return listed[1].trim().split(' ').map(Number);
  const range = /^from (\d+) to (\d+)(?: step ([1-9]\d*))?$/.exec(counted);
  if (!range) return [];
  const [from, to, step] = [Number(range[1]), Number(range[2]), Number(range[3] ?? 1)];
  return Array.from({ length: Math.max(0, Math.floor((to - from) / step) + 1) }, (_, i) => from + i * step);
}
