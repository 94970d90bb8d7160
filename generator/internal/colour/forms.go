package colour

import "math"

// formNames are the line styles of CSS Text Decoration 3.
var formNames = [...]string{"solid", "double", "dotted", "dashed", "wavy"}

// alike says which forms are taken for each other under a narrow letter.
func alike(a, b int) bool { return a != b && a/2 == b/2 }

// forms gives each family of the sequence its form, an index of formNames. It tries every way to
// share families out, evenly, over the forms so that neighbours differ, and keeps the one where
// families of one form
//
//   - are on the same lightness level as seldom as can be (a print in grey),
//   - and differ most, by their closest pair.
func forms(order []int, apart [][]int) []int {
	s := sharing{order: order, apart: apart, room: (len(order) + len(formNames) - 1) / len(formNames)}
	s.group = make([]int, len(order))
	s.bestClash = len(order) * len(order)
	s.try(0, 0, 0, math.MaxInt)
	return s.label()
}

type sharing struct {
	order []int
	apart [][]int
	room  int // families a form may take
	group []int
	size  [len(formNames)]int

	best                 []int
	bestClash, bestLeast int
}

func (s *sharing) try(i, used, clash, least int) {
	if clash > s.bestClash || clash == s.bestClash && least <= s.bestLeast {
		return
	}
	if i == len(s.order) {
		s.best = append(s.best[:0], s.group...)
		s.bestClash, s.bestLeast = clash, least
		return
	}
	for g := range min(used+1, len(formNames)) {
		if s.size[g] == s.room || i > 0 && s.group[i-1] == g {
			continue
		}
		c, l := clash, least
		for j := range i {
			if s.group[j] == g {
				l = min(l, s.apart[s.order[i]][s.order[j]])
				if (s.order[i]-s.order[j])%2 == 0 {
					c++
				}
			}
		}
		s.group[i] = g
		s.size[g]++
		s.try(i+1, max(used, g+1), c, l)
		s.size[g]--
	}
}

// label names the groups: of all ways the first in which the fewest neighbours have forms that look
// alike and, among those, the closest two families with such forms differ most.
func (s *sharing) label() []int {
	var name, best [len(formNames)]int
	bestBeside, bestLeast := len(s.order)+1, 0
	var permute func(g, taken int)
	permute = func(g, taken int) {
		if g < len(name) {
			for f := range name {
				if taken>>f&1 == 0 {
					name[g] = f
					permute(g+1, taken|1<<f)
				}
			}
			return
		}
		beside, least := 0, math.MaxInt
		for i := range s.order {
			for j := range i {
				if alike(name[s.best[i]], name[s.best[j]]) {
					least = min(least, s.apart[s.order[i]][s.order[j]])
					if i-j == 1 {
						beside++
					}
				}
			}
		}
		if beside < bestBeside || beside == bestBeside && least > bestLeast {
			best, bestBeside, bestLeast = name, beside, least
		}
	}
	permute(0, 0)
	out := make([]int, len(s.order))
	for i := range out {
		out[i] = best[s.best[i]]
	}
	return out
}
