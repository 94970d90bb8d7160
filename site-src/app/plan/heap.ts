/** Keeps numbers so that the greatest is always at hand. */
export class Heap {
  private readonly list: number[] = [];

  get size(): number {
    return this.list.length;
  }

  push(n: number): void {
    const { list } = this;
    let i = list.length;
    for (let up: number; i > 0 && list[(up = (i - 1) >> 1)]! < n; i = up) list[i] = list[up]!;
    list[i] = n;
  }

  pop(): number {
    const { list } = this;
    const top = list[0]!;
    const n = list.pop()!;
    let i = 0;
    for (let down = 1; down < list.length; down = 2 * i + 1) {
      if (down + 1 < list.length && list[down + 1]! > list[down]!) down++;
      if (list[down]! <= n) break;
      list[i] = list[down]!;
      i = down;
    }
    if (list.length) list[i] = n;
    return top;
  }
}
