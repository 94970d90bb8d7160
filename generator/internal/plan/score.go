package plan

// score weighs a passage. Each place of the focus is worth 30 points up to 8 places and 6 up to 16;
// each hundredth of the places that the child can read 3; a due rule 25. Nearness is worth up to
// 400 (800 for plain reading) and falls to nothing over 1,200 words, over a fourth of that before
// the child's place; every 500 words cost a point besides; to begin at the very place is worth 60
// (120), to begin and to end with a verse 30 and 20. For a beginner long words cost: up to 4 points
// for every tenth of a letter over three a word. A word over the least length costs 1, and over the
// most 8 more. Each place short of Fewest costs 10 besides what it would be worth, and each place
// over Most 60, which is more than any place is worth: lines with the places aimed at come first,
// and where there are none near, those that come nearest to it. To that end a passage may be
// shortened; each word under the least length then costs 4.
func (q *Query) score(c *candidate) int {
	far := c.at - c.place
	if far < 0 {
		far = -4 * far
	}
	near := 4
	if len(q.Focus) == 0 {
		near = 8
	}
	s := 30*min(c.focus, 8) + 6*min(max(c.focus-8, 0), 8) + 3*c.share + 25*c.due
	s += near*max(0, 100-far/12) - far/500
	if far == 0 {
		s += 15 * near
	}
	if c.whole {
		s += 30
	}
	if c.ends {
		s += 20
	}
	s -= 10 * max(0, q.Fewest-c.focus)
	if q.Most > 0 {
		s -= 60 * max(0, c.focus-q.Most)
	}
	if q.Short < q.Min {
		s -= 4 * max(0, q.Min-c.words)
	}
	s -= max(0, Beginner-q.Level) * max(0, 100*c.letters/c.words-300) / 10
	return s - max(0, c.words-q.Min) - 8*max(0, c.words-q.Max)
}

// candidate is a passage while it is weighed.
type candidate struct {
	at, place      int // words before it, and before the child's place
	words, letters int
	focus, share   int
	due            int
	whole, ends    bool // begins, ends with a verse
}
