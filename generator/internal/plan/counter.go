package plan

import (
	"slices"

	"sutur/generator/internal/passage"
	"sutur/generator/internal/recite"
)

// sums are running sums over the phrases: between(a, b) is the sum of the phrases from a up to but
// not b.
type sums []int32

func (s sums) between(a, b int) int { return int(s[b] - s[a]) }

// channel counts the places of a set of rules together. atStop and atFrom are what changes at the
// pauses.
type channel struct {
	sums
	atStop, atFrom []int16
}

func newChannel(x *passage.Index, rules []recite.RuleID) channel {
	n, pauses := x.Len(), len(x.AtStop[0])
	c := channel{make(sums, n+1), make([]int16, pauses), make([]int16, pauses)}
	for _, r := range rules {
		for i, v := range x.Counts[r] {
			c.sums[i+1] += int32(v)
		}
		for i := range pauses {
			c.atStop[i] += int16(x.AtStop[r][i])
			c.atFrom[i] += int16(x.AtFrom[r][i])
		}
	}
	for i := range n {
		c.sums[i+1] += c.sums[i]
	}
	return c
}

func (c *channel) places(x *passage.Index, a, b int) int {
	n := c.between(a, b+1)
	if k := x.Pause[b]; k >= 0 {
		n += int(c.atStop[k])
	}
	if a > 0 {
		if k := x.Pause[a-1]; k >= 0 {
			n += int(c.atFrom[k])
		}
	}
	return n
}

// counter answers all that a query needs of a passage in a few additions.
type counter struct {
	x                 *passage.Index
	focus, known, all channel // known are the rules taught other than the focus
	due               []channel
	dueRules          []recite.RuleID
	used, letters     sums
	pos               []int           // words read before each phrase
	later             []recite.RuleID // rules not taught
}

func newCounter(x *passage.Index, q *Query) *counter {
	var known, later, every []recite.RuleID
	for r := range recite.RuleID(recite.NumRules) {
		every = append(every, r)
		switch {
		case slices.Contains(q.Focus, r):
		case slices.Contains(q.Known, r):
			known = append(known, r)
		default:
			later = append(later, r)
		}
	}
	k := &counter{x: x, focus: newChannel(x, q.Focus), known: newChannel(x, known), all: newChannel(x, every), later: later, dueRules: q.Due, pos: positions(x, q.Back)}
	for _, r := range q.Due {
		k.due = append(k.due, newChannel(x, []recite.RuleID{r}))
	}
	k.used, k.letters = make(sums, x.Len()+1), make(sums, x.Len()+1)
	for _, u := range q.Used {
		for p := u[0]; p <= u[1]; p++ {
			k.used[p+1] = 1
		}
	}
	for p := range x.Len() {
		k.used[p+1] += k.used[p]
		k.letters[p+1] = k.letters[p] + int32(x.Letters[p])
	}
	return k
}

func (k *counter) candidate(a, b int) candidate {
	c := candidate{
		at: k.pos[a], words: int(k.x.At[b+1] - k.x.At[a]), letters: k.letters.between(a, b+1),
		focus: k.focus.places(k.x, a, b), whole: k.x.StartsVerse(a), ends: k.x.End[b] != passage.PauseEnd,
	}
	if all := k.all.places(k.x, a, b); all > 0 {
		c.share = 100 * (c.focus + k.known.places(k.x, a, b)) / all
	}
	for i := range k.due {
		if k.due[i].places(k.x, a, b) > 0 {
			c.due++
		}
	}
	return c
}

// positions says of each phrase how many words a child reads before it who reads the whole text,
// from its beginning, or surah after surah from the last one back.
func positions(x *passage.Index, back bool) []int {
	pos := make([]int, x.Len())
	if !back {
		for p := range pos {
			pos[p] = int(x.At[p])
		}
		return pos
	}
	end, after := x.Len(), 0 // the first phrase after the surah; words read before it
	for p := x.Len() - 1; p >= 0; p-- {
		if !x.StartsSurah(p) {
			continue
		}
		for i := p; i < end; i++ {
			pos[i] = after + int(x.At[i]-x.At[p])
		}
		after += int(x.At[end] - x.At[p])
		end = p
	}
	return pos
}

// passage gathers the figures of one of the best.
func (k *counter) passage(a, b, score, place int) Passage {
	c := k.candidate(a, b)
	p := Passage{
		A: a, B: b, Words: c.words, Letters: c.letters, Focus: c.focus, Known: k.known.places(k.x, a, b),
		Share: c.share, Distance: c.at - place, Score: score,
	}
	p.Later = k.all.places(k.x, a, b) - p.Focus - p.Known
	for _, r := range k.later {
		if n := k.x.Count(r, a, b); n > 0 {
			p.ByRule = append(p.ByRule, RuleCount{r, n})
		}
	}
	slices.SortStableFunc(p.ByRule, func(a, b RuleCount) int { return b.Places - a.Places })
	for i := range k.due {
		if k.due[i].places(k.x, a, b) > 0 {
			p.Due = append(p.Due, k.dueRules[i])
		}
	}
	return p
}
