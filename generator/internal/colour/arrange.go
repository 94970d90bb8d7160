package colour

import "math"

// arrange gives the order of hues along the teaching sequence in which the smallest difference
// between neighbours is as large as it can be and, among those, the sum of neighbours' differences
// too. It is exact: dynamic programming over sets of hues, first for the smallest, then for the sum
// over the pairs that keep it.
func arrange(apart [][]int) []int {
	if len(apart) == 0 {
		return nil
	}
	widest := func(soFar, step int) int { return min(soFar, step) }
	_, least := walk(apart, 0, math.MaxInt, widest)
	order, _ := walk(apart, least, 0, func(soFar, step int) int { return soFar + step })
	return order
}

// walk finds the path through all hues with the greatest value: start for one hue, then join(value,
// difference) for each step, steps under floor barred.
func walk(apart [][]int, floor, start int, join func(soFar, step int) int) ([]int, int) {
	n := len(apart)
	type cell struct{ value, from int }
	best := make([]cell, n<<n) // best[set*n+last]; value -1: no path
	for i := range best {
		best[i].value = -1
	}
	for i := range n {
		best[(1<<i)*n+i] = cell{start, -1}
	}
	for set := 1; set < 1<<n; set++ {
		for last := range n {
			b := best[set*n+last]
			if b.value < 0 {
				continue
			}
			for next := range n {
				if set>>next&1 == 1 || apart[last][next] < floor {
					continue
				}
				to := &best[(set|1<<next)*n+next]
				if v := join(b.value, apart[last][next]); v > to.value {
					*to = cell{v, last}
				}
			}
		}
	}
	set, last := 1<<n-1, 0
	for i := range n {
		if best[set*n+i].value > best[set*n+last].value {
			last = i
		}
	}
	value := best[set*n+last].value
	order := make([]int, n)
	for i := n - 1; i >= 0; i-- {
		order[i] = last
		set, last = set&^(1<<last), best[set*n+last].from
	}
	return order, value
}
