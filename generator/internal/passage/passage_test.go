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

// TestPhrases: every word of the text is in one phrase, and every phrase that is no split ends where the text lets the
// reader stop.
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

// TestCounts holds the index against the engine reading the same words with the stops of the passage.
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

func TestEncode(t *testing.T) {
	x := build()
	b := x.Encode()
	y, err := Decode(b)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(y.Encode(), b) || !slices.Equal(x.Of, y.Of) {
		t.Error("the index differs after it was written and read")
	}
	kept := headLen + 3*x.Len() // where the file says which rules change at pauses
	strange, empty := slices.Clone(b), slices.Clone(b)
	strange[kept], empty[kept] = 4, 1 // heavy-letter never changes
	row := make([]byte, len(x.AtStop[0]))
	strange, empty = append(strange, row...), append(empty, row...)
	for _, bad := range [][]byte{strange, empty, nil, b[:9], b[:len(b)-1], append(slices.Clone(b), 0), append([]byte("nono"), b[4:]...)} {
		if _, err := Decode(bad); err == nil {
			t.Errorf("%d damaged bytes are read without complaint", len(bad))
		}
	}
	var z bytes.Buffer
	w, _ := gzip.NewWriterLevel(&z, gzip.BestCompression)
	w.Write(b)
	w.Close()
	t.Logf("%d bytes, %d compressed", len(b), z.Len())
	if z.Len() > 150_000 {
		t.Errorf("the index takes %d bytes over the wire; at most 150,000 are wanted", z.Len())
	}
}

func FuzzDecode(f *testing.F) {
	f.Add([]byte(magic + "\x01\x00\x00\x00\x01\x00\x01\x01\x03\x00\x02"))
	f.Add([]byte(magic + "\x02\x00\x01\x00\x01\x00\x01\x01\x01\x01\x01\x03\x02\x02\x02\xff"))
	f.Fuzz(func(t *testing.T, b []byte) {
		x, err := Decode(b)
		if err != nil {
			return
		}
		if !bytes.Equal(x.Encode()[headLen:], b[headLen:]) {
			t.Error("what was read is written differently")
		}
	})
}

func BenchmarkBuild(b *testing.B) {
	load()
	for b.Loop() {
		build()
	}
}
