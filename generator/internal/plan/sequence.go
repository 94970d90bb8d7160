package plan

import "slices"

// Why says what puts a lesson in its place.
type Why string

// A lesson begins a row of its family because it is the easiest to see of those that could come; it
// begins one because it builds on the row before; it goes on with the row; it is rare and comes
// late.
const (
	Begins Why = "begins"
	Builds Why = "builds"
	Row    Why = "row"
	Rare   Why = "rare"
)

// Step is one unit of a sequence, with the reason for its place.
type Step struct {
	Unit   int
	Why    Why
	On     int  // the unit it builds on, or that it follows in its row; itself for Begins and Rare
	Places int  // in the last juz
	Look   int  // things that a child must look at besides the letter, 0 to 3
	Sign   bool // the print shows each place by a sign
}

// The levels of units. A unit is at the level of the things that a child must look at for it, and
// not below any that it needs. What the letter alone shows is at the first level with what needs
// one look more. Rare units are at the last.
const (
	lowest    = 1
	rareLevel = 9
)

// sequence orders units by what is seen of each, in this order of weight:
//
//  1. What a unit needs comes before it.
//  2. The lower level comes first, and of the rare ones what has the most places.
//  3. In a level, the units of one family that can come now make a row: those that the print shows
//     by a sign first, then those that need the fewest looks, then those with the most places.
//  4. After a row come rows that build on it; then the row whose first unit needs the fewest looks;
//     then the one with the most places. Equal ones keep their order.
func sequence(units []Unit, seen []sight) []Step {
	s := sequencer{units, seen, make([]int, len(units)), make([]bool, len(units)), nil}
	for i := range units {
		s.setLevel(i)
	}
	var steps []Step
	for len(steps) < len(units) {
		row := s.nextRow()
		why, on := Begins, row[0]
		if need := s.builds(row[0]); need >= 0 {
			why, on = Builds, need
		}
		if s.level[row[0]] == rareLevel {
			why, on = Rare, row[0]
		}
		for _, u := range row {
			steps = append(steps, Step{u, why, on, seen[u].places, seen[u].look, seen[u].sign})
			why, on = Row, u
		}
		s.last = row
	}
	return steps
}

type sequencer struct {
	units []Unit
	seen  []sight
	level []int // 0 until it is known
	done  []bool
	last  []int // the row before
}

func (s *sequencer) setLevel(i int) int {
	if s.level[i] > 0 {
		return s.level[i]
	}
	s.level[i] = lowest // also ends a circle of needs
	level := max(lowest, s.seen[i].looks())
	if s.seen[i].rare {
		level = rareLevel
	}
	for _, n := range s.units[i].Needs {
		level = max(level, s.setLevel(n))
	}
	s.level[i] = level
	return level
}

// ready reports whether unit i can come now.
func (s *sequencer) ready(i int) bool {
	return !s.done[i] && !slices.ContainsFunc(s.units[i].Needs, func(n int) bool { return !s.done[n] })
}

// builds returns a unit of the row before that unit i needs, -1 if there is none.
func (s *sequencer) builds(i int) int {
	for _, n := range s.units[i].Needs {
		if slices.Contains(s.last, n) {
			return n
		}
	}
	return -1
}

// nextRow takes the next row, at least one unit, and sets it done.
func (s *sequencer) nextRow() []int {
	low := 0
	for i := range s.units {
		if s.ready(i) && (low == 0 || s.level[i] < low) {
			low = s.level[i]
		}
	}
	if low == 0 { // units that need each other
		row := []int{slices.Index(s.done, false)}
		s.done[row[0]] = true
		return row
	}
	var best []int
	for i := range s.units {
		if !s.ready(i) || s.level[i] != low {
			continue
		}
		row := []int{i}
		if low != rareLevel {
			row = s.row(i)
		}
		if best == nil || s.before(row, best) {
			best = row
		}
	}
	for _, u := range best {
		s.done[u] = true
	}
	return best
}

// row is all of i's family that can come now, at i's level, one after the other.
func (s *sequencer) row(i int) (row []int) {
	for {
		first := -1
		for k := range s.units {
			if s.units[k].Family == s.units[i].Family && s.level[k] == s.level[i] && s.ready(k) && (first < 0 || s.easier(k, first)) {
				first = k
			}
		}
		if first < 0 {
			break
		}
		row, s.done[first] = append(row, first), true
	}
	for _, u := range row {
		s.done[u] = false
	}
	return row
}

// easier reports whether unit a of a row comes before b where both can.
func (s *sequencer) easier(a, b int) bool {
	x, y := s.seen[a], s.seen[b]
	switch {
	case x.sign != y.sign:
		return x.sign
	case x.looks() != y.looks():
		return x.looks() < y.looks()
	}
	return x.places > y.places
}

// before reports whether row a comes before row b.
func (s *sequencer) before(a, b []int) bool {
	rare := s.level[a[0]] == rareLevel
	if x, y := s.builds(a[0]) >= 0, s.builds(b[0]) >= 0; x != y && !rare {
		return x
	}
	if x, y := s.seen[a[0]].looks(), s.seen[b[0]].looks(); x != y && !rare {
		return x < y
	}
	return s.places(a) > s.places(b)
}

func (s *sequencer) places(row []int) (n int) {
	for _, u := range row {
		n += s.seen[u].places
	}
	return n
}
