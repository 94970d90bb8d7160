package passage

import (
	"bytes"
	"compress/gzip"
	"math/rand/v2"
	"os"
	"slices"
	"sync"
	"testing"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

var load = sync.OnceValue(func() *mushaf.Text {
	t, err := mushaf.Load(os.DirFS("../../../rules-content/text"))
	if err != nil {
		panic(err)
	}
	return t
})

func build() *Index {
	return Build(load(), func() Engine { return recite.New(load()) })
}

func TestPart(t *testing.T) {
	for _, c := range []struct {
		n    int
		want []int
	}{{1, []int{1}}, {12, []int{12}}, {13, []int{7, 6}}, {24, []int{12, 12}}, {25, []int{9, 8, 8}}} {
		var got []int
		for _, p := range part(nil, c.n, VerseEnd) {
			got = append(got, p.words)
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%d words are parted into %v, want %v", c.n, got, c.want)
		}
	}
}

// TestPhrases: every word of the text is in one phrase, and every phrase that is no split ends
// where the text lets the reader stop.
func TestPhrases(t *testing.T) {
	text, x := load(), build()
	var ends [4]int
	p := 0
	for v := range text.Verses {
		vs := &text.Verses[v]
		for w := 0; w < len(vs.Words); p++ {
			if int(x.Verse[p]) != v || int(x.First[p]) != w {
				t.Fatalf("phrase %d begins at verse %d word %d, want %d, %d", p, x.Verse[p], x.First[p], v, w)
			}
			if x.Words[p] < 1 || x.Words[p] > LongestPhrase {
				t.Errorf("phrase %d has %d words", p, x.Words[p])
			}
			w += int(x.Words[p])
			ends[x.End[p]]++
			last := &vs.Words[w-1]
			stop := w == len(vs.Words) || last.Pause >= 0x06D6 && last.Pause <= 0x06DB && last.Pause != 0x06D9
			if stop != (x.End[p] != Split) {
				t.Errorf("%d:%d word %d: the phrase's end is %d", vs.Surah, vs.Ayah, w, x.End[p])
			}
		}
	}
	if p != x.Len() || ends[SurahEnd] != 114 || ends[VerseEnd] != 6236-114 || int(x.At[p]) != 77433 {
		t.Errorf("%d phrases of %d, ends %v, %d words", p, x.Len(), ends, x.At[p])
	}
	t.Logf("%d phrases; ends: split %d, pause %d, verse %d, surah %d", p, ends[0], ends[1], ends[2], ends[3])
}

// TestCounts holds the index against the engine reading the same words with the stops of the
// passage.
func TestCounts(t *testing.T) {
	text, x := load(), build()
	e := recite.New(text)
	rnd := rand.New(rand.NewPCG(1, 2))
	mid := 0
	for range 2000 {
		a := rnd.IntN(x.Len())
		for !x.MayStart(a) {
			a--
		}
		b := a + rnd.IntN(8)
		for b >= x.Len() || x.End[b] == Split {
			if b++; b >= x.Len() {
				b = x.Len() - 1
			}
		}
		mid += b2i[int](!x.StartsVerse(a)) + b2i[int](x.End[b] == PauseEnd)
		want := read(e, x, a, b)
		for r := range recite.NumRules {
			if got := x.Count(recite.RuleID(r), a, b); got != want[r] {
				v := &text.Verses[x.Verse[a]]
				t.Fatalf("%s in phrases %d-%d (from %d:%d word %d): the index has %d places, the engine %d",
					recite.RuleID(r), a, b, v.Surah, v.Ayah, x.First[a], got, want[r])
			}
		}
	}
	if mid < 500 {
		t.Errorf("only %d ends were within a verse", mid)
	}
}

// read counts with the engine alone.
func read(e *recite.Engine, x *Index, a, b int) (n [recite.NumRules]int) {
	r := recite.Reading{Stop: map[[2]int]bool{}}
	first, last := int(x.Verse[a]), int(x.Verse[b])
	from, to := int(x.First[a]), int(x.First[b])+int(x.Words[b])-1
	if from > 0 {
		r.Stop[[2]int{first, from - 1}] = true
	}
	r.Stop[[2]int{last, to}] = true
	for v := first; v <= last; v++ {
		for _, ev := range e.Reading(nil, v, r) {
			w := int(ev.Word)
			if !ev.Unwritten && (v > first || w >= from) && (v < last || w <= to) {
				n[ev.Rule]++
			}
		}
	}
	return n
}

// TestEncode: an index of two phrases and two rules, each byte worked out by hand.
func TestEncode(t *testing.T) {
	x := &Index{
		Words: []uint8{3, 2}, Letters: []uint8{9, 6}, End: []End{PauseEnd, SurahEnd},
		Counts: [][]uint8{{1, 0}, {0, 2}}, AtStop: [][]int8{{1}, {0}}, AtFrom: [][]int8{{0}, {-1}},
	}
	want := []byte{
		'S', 'P', 'I', '2', 2, 0, 1, 0, 2, 0, // two phrases, one pause, two rules
		3, 2, 9, 6, 1, 3, // words, letters, ends
		1, 2, // the first rule changes at stops, the second at starts
		1, 0, 0, 2, // counts
		1, 0xff, // one more at the stop, one fewer at the start
	}
	if got := x.Encode(); !bytes.Equal(got, want) {
		t.Errorf("got  %v\nwant %v", got, want)
	}
}

func TestSize(t *testing.T) {
	b := build().Encode()
	var z bytes.Buffer
	w, _ := gzip.NewWriterLevel(&z, gzip.BestCompression)
	w.Write(b)
	w.Close()
	t.Logf("%d bytes, %d compressed", len(b), z.Len())
	if z.Len() > 150_000 {
		t.Errorf("the index takes %d bytes over the wire; at most 150,000 are expected", z.Len())
	}
}

func BenchmarkBuild(b *testing.B) {
	load()
	for b.Loop() {
		build()
	}
}
