package plan

import (
	"cmp"
	"fmt"
	"math/rand/v2"
	"os"
	"slices"
	"sync"
	"testing"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/passage"
	"sutur/generator/internal/recite"
)

var text = sync.OnceValue(func() *mushaf.Text {
	t, err := mushaf.Load(os.DirFS("../../../rules-content/text"))
	if err != nil {
		panic(err)
	}
	return t
})

var index = sync.OnceValue(func() *passage.Index {
	return passage.Build(text(), func() passage.Engine { return recite.New(text()) })
})

// randomQuery makes a learner with n rules taught, somewhere in the text.
func randomQuery(r *rand.Rand) Query {
	order := r.Perm(recite.NumRules)
	pick := func(n int) (list []recite.RuleID) {
		for _, i := range order[:n] {
			list = append(list, recite.RuleID(i))
		}
		return list
	}
	q := Query{Known: pick(r.IntN(recite.NumRules)), Place: r.IntN(6236), Level: r.IntN(8)}
	if r.IntN(8) > 0 {
		q.Focus = []recite.RuleID{recite.RuleID(r.IntN(recite.NumRules))}
		if r.IntN(4) == 0 {
			q.Focus[0] = []recite.RuleID{recite.Imalah, recite.Ishmam, recite.TasHil, recite.SadAsSeen}[r.IntN(4)]
		}
		if r.IntN(4) == 0 {
			q.Focus = append(q.Focus, (q.Focus[0]+1)%recite.NumRules)
		}
	}
	for _, i := range r.Perm(recite.NumRules)[:r.IntN(11)] {
		q.Due = append(q.Due, recite.RuleID(i))
	}
	if r.IntN(3) == 0 && len(q.Focus) == 1 {
		q.From = r.IntN(6236)
		q.To = min(q.From+r.IntN(600), 6235)
	}
	if r.IntN(3) == 0 {
		q.Min = 8 + r.IntN(20)
		q.Max = q.Min + r.IntN(25)
	}
	x := index()
	for range r.IntN(20) {
		a := r.IntN(x.Len() - 6)
		q.Used = append(q.Used, [2]int{a, a + r.IntN(6)})
	}
	if r.IntN(2) == 0 && len(q.Focus) > 0 {
		q.Fewest = 1 + r.IntN(16)
		q.Most = q.Fewest + r.IntN(8)
		q.Short = 3 + r.IntN(8)
	}
	q.Back = r.IntN(3) == 0
	return q
}

// inReadingOrder says of each phrase how many words are read before it, by putting the phrases in
// the order in which they are read.
func inReadingOrder(x *passage.Index, back bool) []int {
	surah := func(p int) int { return text().Verses[x.Verse[p]].Surah }
	order := make([]int, x.Len())
	for p := range order {
		order[p] = p
	}
	if back {
		slices.SortStableFunc(order, func(p, q int) int { return surah(q) - surah(p) })
	}
	before, n := make([]int, x.Len()), 0
	for _, p := range order {
		before[p] = n
		n += int(x.Words[p])
	}
	return before
}

// TestPositions: surah after surah backwards, each forwards.
func TestPositions(t *testing.T) {
	x, tx := index(), text()
	for _, c := range []struct {
		surah, ayah int
		back        bool
		want        int
	}{
		{1, 1, false, 0},
		{114, 1, true, 0},
		{113, 1, true, 20}, // An-Nas has 20 words
		{113, 2, true, 24}, // after the 4 words of 113:1
		{112, 1, true, 43}, // Al-Falaq has 23
	} {
		p := int(x.Of[tx.Find(c.surah, c.ayah)])
		if got := positions(x, c.back)[p]; got != c.want {
			t.Errorf("%d:%d, back %v: %d words before it, want %d", c.surah, c.ayah, c.back, got, c.want)
		}
	}
	for _, back := range []bool{false, true} {
		if got, want := positions(x, back), inReadingOrder(x, back); !slices.Equal(got, want) {
			t.Errorf("back %v: not the order of reading", back)
		}
	}
}

// brute does what rank promises, passage by passage, from the counts alone: no running sums,
// nothing kept from one passage to the next, and the choice made by asking of every passage what
// the promise says.
func brute(x *passage.Index, q Query) Ranking {
	q.defaults(x)
	type one struct {
		Passage
		touches, same bool
	}
	var all []one
	before := inReadingOrder(x, q.Back)
	for a := int(x.Of[q.From]); a < int(x.Of[q.To+1]); a++ {
		if a > 0 && x.End[a-1] == passage.Split {
			continue
		}
		var ends []int
		for b := a; b < int(x.Of[q.To+1]); b++ {
			ends = append(ends, b)
			if x.End[b] == passage.SurahEnd {
				break
			}
		}
		ends = slices.DeleteFunc(ends, func(b int) bool { return x.End[b] == passage.Split })
		words := func(b int) (n int) {
			for p := a; p <= b; p++ {
				n += int(x.Words[p])
			}
			return n
		}
		startsSurah := a == 0 || x.End[a-1] == passage.SurahEnd
		var fit, long []int
		for _, b := range ends {
			switch n := words(b); {
			case n >= q.Short && n <= q.Max, n < q.Short && x.End[b] == passage.SurahEnd && (startsSurah || n*2 >= q.Short):
				fit = append(fit, b)
			case n > q.Max:
				long = append(long, b)
			}
			if len(long) > 0 {
				break
			}
		}
		if len(fit) == 0 && len(long) > 0 {
			fit = long[:1]
		}
		for _, b := range fit {
			o := one{Passage: Passage{A: a, B: b, Words: words(b)}}
			for p := a; p <= b; p++ {
				o.Letters += int(x.Letters[p])
			}
			total := 0
			counts := countsOf(x, a, b)
			for r := range recite.RuleID(recite.NumRules) {
				n := counts[r]
				total += n
				switch {
				case slices.Contains(q.Focus, r):
					o.Focus += n
				case slices.Contains(q.Known, r):
					o.Known += n
				default:
					o.Later += n
					if n > 0 {
						o.ByRule = append(o.ByRule, RuleCount{r, n})
					}
				}
			}
			slices.SortStableFunc(o.ByRule, func(a, b RuleCount) int { return cmp.Compare(b.Places, a.Places) })
			for _, r := range q.Due {
				if counts[r] > 0 {
					o.Due = append(o.Due, r)
				}
			}
			if total > 0 {
				o.Share = (o.Focus + o.Known) * 100 / total
			}
			o.Distance = before[a] - before[x.Of[q.Place]]
			for _, u := range q.Used {
				o.touches = o.touches || u[0] <= b && a <= u[1]
				o.same = o.same || u == [2]int{a, b}
			}
			o.Score = q.score(&candidate{at: o.Distance, words: o.Words, letters: o.Letters, focus: o.Focus, share: o.Share,
				due: len(o.Due), whole: x.First[a] == 0, ends: x.End[b] >= passage.VerseEnd})
			all = append(all, o)
		}
	}
	r := Ranking{Seen: len(all)}
	fresh := slices.DeleteFunc(slices.Clone(all), func(o one) bool { return o.touches })
	other := slices.DeleteFunc(slices.Clone(all), func(o one) bool { return o.same })
	most := func(list []one) (n int) {
		for _, o := range list {
			n = max(n, o.Focus)
		}
		return n
	}
	list := fresh
	switch {
	case len(q.Focus) == 0:
	case most(fresh) >= q.Want:
		r.Least = q.Want
	case most(fresh) > 0:
		r.Least, r.How = most(fresh), Fewer
	case most(other) > 0:
		list, r.Least, r.How = other, min(most(other), q.Want), Again
	default:
		r.How = Nowhere
		return r
	}
	for len(r.Passages) < q.Best {
		best := -1
		for i, o := range list {
			if o.Focus < r.Least || slices.ContainsFunc(r.Passages, func(p Passage) bool { return p.A <= o.B && o.A <= p.B }) {
				continue
			}
			if best < 0 || o.Score > list[best].Score {
				best = i
			}
		}
		if best < 0 {
			break
		}
		r.Passages = append(r.Passages, list[best].Passage)
	}
	return r
}

var counted = map[[2]int]*[recite.NumRules]int{}

// countsOf remembers what x.Count says, for speed alone.
func countsOf(x *passage.Index, a, b int) *[recite.NumRules]int {
	n := counted[[2]int{a, b}]
	if n == nil {
		n = new([recite.NumRules]int)
		for r := range n {
			n[r] = x.Count(recite.RuleID(r), a, b)
		}
		counted[[2]int{a, b}] = n
	}
	return n
}

func TestRankAgainstBruteForce(t *testing.T) {
	n := 12
	if testing.Short() {
		n = 10
	}
	rnd := rand.New(rand.NewPCG(7, 8))
	how := map[int]int{}
	for i := range n {
		q := randomQuery(rnd)
		got, want := rank(index(), q), brute(index(), q)
		if fmt.Sprintf("%+v", got) != fmt.Sprintf("%+v", want) {
			t.Fatalf("learner %d, %+v:\n got %+v\nwant %+v", i, q, got, want)
		}
		how[got.How]++
		for range 3 { // until a rare rule has only used places left
			for _, p := range got.Passages {
				q.Used = append(q.Used, [2]int{p.A, p.B})
			}
			got, want = rank(index(), q), brute(index(), q)
			if fmt.Sprintf("%+v", got) != fmt.Sprintf("%+v", want) {
				t.Fatalf("learner %d, %+v:\n got %+v\nwant %+v", i, q, got, want)
			}
			how[got.How]++
		}
	}
	for k := AsWanted; k <= Nowhere; k++ {
		if how[k] == 0 {
			t.Errorf("no learner had the case %d: this check misses it", k)
		}
	}
	t.Logf("%d learners; as wanted %d, fewer %d, again %d, nowhere %d", n, how[AsWanted], how[Fewer], how[Again], how[Nowhere])
}

// TestCoverage: every phrase of the text is in some passage, so every place can be practised.
func TestCoverage(t *testing.T) {
	x := index()
	in := make([]bool, x.Len())
	seen, long, longest := 0, 0, 0
	candidates(x, 0, x.Len()-1, MinWords, MaxWords, func(a, b int) {
		seen++
		if n := int(x.At[b+1] - x.At[a]); n > MaxWords {
			long++
			longest = max(longest, n)
		}
		for p := a; p <= b; p++ {
			in[p] = true
		}
	})
	for p, ok := range in {
		if !ok {
			v := text().Verses[x.Verse[p]]
			t.Errorf("no passage holds the phrase at %d:%d word %d", v.Surah, v.Ayah, x.First[p]+1)
		}
	}
	t.Logf("%d passages; %d longer than %d words, the longest %d", seen, long, MaxWords, longest)
}

func BenchmarkRank(b *testing.B) {
	x := index()
	q := Query{Focus: []recite.RuleID{recite.NoonIkhfa}, Known: []recite.RuleID{recite.Ghunnah, recite.Qalqalah}, Place: 5672}
	short := q
	short.Fewest, short.Most, short.Short = 4, 7, 4
	for _, c := range []struct {
		name string
		q    Query
	}{{"usual", q}, {"shortened", short}} {
		b.Run(c.name, func(b *testing.B) {
			for b.Loop() {
				rank(x, c.q)
			}
		})
	}
}
