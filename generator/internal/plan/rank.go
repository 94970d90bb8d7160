package plan

import (
	"cmp"
	"slices"

	"sutur/generator/internal/passage"
	"sutur/generator/internal/recite"
)

// Query asks for passages. The zero value of a number stands for its default.
type Query struct {
	Focus []recite.RuleID // the rules to find and mark; empty for plain reading
	Known []recite.RuleID // the rules taught, those of Focus or not
	Due   []recite.RuleID // the rules due for review, the most overdue first; the first MaxDue count
	Place int             // the verse (index) where the child is
	Back  bool            // the child reads surah after surah backwards, each of them forwards
	From  int             // first and last verse (indices) to look in; To 0 stands for the last of the text
	To    int
	Used  [][2]int // phrases, both included, of the passages of the last days
	Level int      // lessons taught so far: below Beginner, words of few letters come first
	Min   int      // words of a passage, default 15 to 30
	Max   int
	Short int // words down to which a passage may be shortened for its places, default Min
	Want  int // places of Focus that are enough to practise, default 4

	// Fewest and Most places of Focus are aimed at; 0 is no bound.
	Fewest, Most int

	Best int // how many passages are asked for, default 10
}

// Defaults of a query, and what its words mean.
const (
	MinWords = 15
	MaxWords = 30
	Enough   = 4
	Best     = 10
	MaxDue   = 8
	Beginner = 4
)

// How the least number of places was found.
const (
	AsWanted = iota // every passage has at least Query.Want places
	Fewer           // nowhere in reach are there so many: the most there are is taken
	Again           // the same, and only where a passage of the last days was: its rule comes nowhere else
	Nowhere         // the rule has no place in the verses asked for
)

// Ranking is the answer to a Query.
type Ranking struct {
	Seen     int // how many passages were weighed
	Least    int // places of Focus that every passage has at least
	How      int
	Passages []Passage // the best first; no two share a word
}

// Passage is the phrases from A to B, both included, with the figures that speak for it. Places are
// written places under the default stops and a stop at the passage's end.
type Passage struct {
	A, B     int
	Words    int
	Letters  int
	Focus    int // places of the focus
	Known    int // places of the other rules taught
	Later    int // places of rules not yet taught
	ByRule   []RuleCount
	Due      []recite.RuleID // due rules that have a place here
	Share    int             // places the child can read, Focus among them, of all places, in percent
	Distance int             // words read from the child's place to its beginning; negative before it
	Score    int
}

// RuleCount is a rule not yet taught with its places.
type RuleCount struct {
	Rule   recite.RuleID
	Places int
}

func (q *Query) defaults(x *passage.Index) {
	q.Min, q.Max = cmp.Or(q.Min, MinWords), cmp.Or(q.Max, MaxWords)
	q.Want, q.Best, q.To = cmp.Or(q.Want, Enough), cmp.Or(q.Best, Best), cmp.Or(q.To, len(x.Of)-2)
	q.Short = min(cmp.Or(q.Short, q.Min), q.Min)
	q.Due = q.Due[:min(len(q.Due), MaxDue)]
}

// rank weighs every passage of the verses asked for and returns the best. Passages that share a
// word with one used lately, or that have too few places of the focus, are left out as long as
// there are others.
func rank(x *passage.Index, q Query) Ranking {
	q.defaults(x)
	k := newCounter(x, &q)
	place := k.pos[x.Of[q.Place]]
	type weighed struct {
		a, b, score, focus int
		used               bool
	}
	var all []weighed
	most, mostFresh := 0, 0
	candidates(x, int(x.Of[q.From]), int(x.Of[q.To+1])-1, q.Short, q.Max, func(a, b int) {
		w := weighed{a: a, b: b, focus: k.focus.places(x, a, b), used: k.used.between(a, b+1) > 0}
		all = append(all, w)
		if w.focus > most && !slices.Contains(q.Used, [2]int{a, b}) {
			most = w.focus
		}
		if !w.used {
			mostFresh = max(mostFresh, w.focus)
		}
	})
	r := Ranking{Seen: len(all)}
	switch {
	case len(q.Focus) == 0:
		r.Least = 0
	case mostFresh >= q.Want:
		r.Least = q.Want
	case mostFresh > 0:
		r.Least, r.How = mostFresh, Fewer
	case most > 0:
		r.Least, r.How = min(most, q.Want), Again
	default:
		r.How = Nowhere
		return r
	}
	// Only what can be chosen is weighed whole.
	all = slices.DeleteFunc(all, func(w weighed) bool {
		if w.focus < r.Least || r.How == Again && slices.Contains(q.Used, [2]int{w.a, w.b}) {
			return true
		}
		return r.How != Again && w.used
	})
	for i := range all {
		c := k.candidate(all[i].a, all[i].b)
		c.place = place
		all[i].score = q.score(&c)
	}
	slices.SortFunc(all, func(a, b weighed) int {
		return cmp.Or(cmp.Compare(b.score, a.score), cmp.Compare(a.a, b.a), cmp.Compare(a.b, b.b))
	})
	taken := make([]bool, x.Len())
	for _, w := range all {
		if len(r.Passages) == q.Best {
			break
		}
		if slices.Contains(taken[w.a:w.b+1], true) {
			continue
		}
		for p := w.a; p <= w.b; p++ {
			taken[p] = true
		}
		r.Passages = append(r.Passages, k.passage(w.a, w.b, w.score, place))
	}
	return r
}

// candidates calls f for every passage within the phrases from first to last: it begins where a
// reader may start, ends where a reader may stop, lies within one surah, and has min to max words.
// Where no such end is in reach of a beginning, the first end beyond max is taken. A surah of fewer
// than min words is a passage, and so is the rest of a surah that has half of min.
func candidates(x *passage.Index, first, last, min, max int, f func(a, b int)) {
	for a := first; a <= last; a++ {
		if !x.MayStart(a) {
			continue
		}
		words, found := 0, false
		for b := a; b <= last; b++ {
			words += int(x.Words[b])
			if words > max && found {
				break
			}
			end := x.End[b]
			if end != passage.Split && (words >= min || end == passage.SurahEnd && (x.StartsSurah(a) || 2*words >= min)) {
				f(a, b)
				found = true
			}
			if end == passage.SurahEnd || words > max && found {
				break
			}
		}
	}
}

// Choose ranks, and where a rule with very few places has none left in lines that have not been
// read these days, tries lines of half to one and a half the length around the same places, and at
// last the same lines again.
func Choose(x *passage.Index, q Query) Ranking {
	r := rank(x, q)
	if r.How == Nowhere && len(q.Used) > 0 {
		q.defaults(x)
		q.Min, q.Max = q.Min/2, q.Max*3/2
		r = rank(x, q)
	}
	if r.How == Nowhere && len(q.Used) > 0 {
		q.Used = nil
		if r = rank(x, q); r.How != Nowhere {
			r.How = Again
		}
	}
	return r
}
