// Package passage splits the whole text into phrases and counts, for every phrase, the places of
// every rule: the index from which the planner finds lines for a child, on the command line
// (package plan) and in the browser.
//
// A phrase runs from one permitted stop to the next: verse ends and pause signs; a stretch of more
// than LongestPhrase words is split at a word, which is no stop. A passage is a run of phrases
// within one surah that begins where a reader may start and ends where a reader may stop.
//
// Counts are places as the child marks them: events that hold in the default reading (stops at
// verse ends, reads on everywhere else) and that are written. A passage that ends, or begins, at a
// pause sign changes what holds at that word; what changes is kept beside the counts, so that the
// places of any passage are sums. Everything is kept column by column, one byte a number: such
// columns compress well (encode.go).
package passage

import (
	"runtime"
	"sync"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// Index is the phrases of the whole text, in order. The first five columns and the three tables are
// what is written to the index file; the rest follows from them.
type Index struct {
	Words   []uint8 // words of the phrase
	Letters []uint8 // letters of the phrase, as mushaf counts them
	End     []End

	Counts [][]uint8 // [rule][phrase]: places in the default reading
	AtStop [][]int8  // [rule][pause]: what stopping at the pause adds to the phrase before it (less what it takes from it)
	AtFrom [][]int8  // [rule][pause]: what starting after the pause adds to the phrase after it

	Verse []int32 // index of the phrase's verse in mushaf.Text.Verses
	First []int32 // word of the verse with which the phrase begins, from 0
	At    []int32 // words of the whole text before the phrase; one more entry than phrases, the last the total
	Pause []int32 // number of the pause that ends the phrase, counted from 0 over all PauseEnd; else -1
	Of    []int32 // phrase with which each verse begins; one more entry than verses, the last the number of phrases
}

// Engine finds the events of a verse under all conditions, as *recite.Engine does.
type Engine interface {
	Verse(dst []recite.Event, v int) []recite.Event
}

// Build makes the index of t. newEngine is called once for every core.
func Build(t *mushaf.Text, newEngine func() Engine) *Index {
	x := &Index{}
	var pieces []piece
	for i := range t.Verses {
		v := &t.Verses[i]
		pieces = cut(pieces[:0], v, i+1 == len(t.Verses) || t.Verses[i+1].Ayah == 1)
		w := 0
		for _, p := range pieces {
			letters := 0
			for _, word := range v.Words[w : w+p.words] {
				letters += len(word.Letters)
			}
			x.Words = append(x.Words, uint8(p.words))
			x.Letters = append(x.Letters, uint8(letters))
			x.End = append(x.End, p.end)
			w += p.words
		}
	}
	pauses := x.derive()
	x.Counts, x.AtStop, x.AtFrom = table[uint8](len(x.Words)), table[int8](pauses), table[int8](pauses)
	x.count(t, newEngine)
	return x
}

func table[T any](n int) [][]T {
	all := make([]T, recite.NumRules*n)
	rows := make([][]T, recite.NumRules)
	for r := range rows {
		rows[r] = all[r*n : (r+1)*n : (r+1)*n]
	}
	return rows
}

// derive fills the columns that follow from Words and End, and returns the number of pauses.
func (x *Index) derive() (pauses int) {
	n := len(x.Words)
	x.Verse, x.First, x.Pause = make([]int32, n), make([]int32, n), make([]int32, n)
	x.At, x.Of = make([]int32, n+1), []int32{0}
	verse, first := int32(0), int32(0)
	for i := range n {
		x.Verse[i], x.First[i], x.Pause[i] = verse, first, -1
		x.At[i+1] = x.At[i] + int32(x.Words[i])
		first += int32(x.Words[i])
		switch x.End[i] {
		case PauseEnd:
			x.Pause[i] = int32(pauses)
			pauses++
		case VerseEnd, SurahEnd:
			verse, first = verse+1, 0
			x.Of = append(x.Of, int32(i+1))
		}
	}
	return pauses
}

// count counts the places of all verses. The cores share the verses in blocks; two phrases are
// never counted by two.
func (x *Index) count(t *mushaf.Text, newEngine func() Engine) {
	const block = 256
	blocks := make(chan int, (len(t.Verses)+block-1)/block)
	for v := 0; v < len(t.Verses); v += block {
		blocks <- v
	}
	close(blocks)
	var wg sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		wg.Go(func() {
			e := newEngine()
			var events []recite.Event
			for from := range blocks {
				for v := from; v < min(from+block, len(t.Verses)); v++ {
					events = e.Verse(events[:0], v)
					x.countVerse(v, len(t.Verses[v].Words)-1, events)
				}
			}
		})
	}
	wg.Wait()
}

// countVerse counts the events of verse v, whose last word is last.
func (x *Index) countVerse(v, last int, events []recite.Event) {
	from, end := x.Of[v], x.Of[v+1]
	for i := range events {
		ev := &events[i]
		if ev.Unwritten {
			continue
		}
		w := int32(ev.Word)
		p := from
		for p+1 < end && x.First[p+1] <= w {
			p++
		}
		begins, ends := w == 0, int(w) == last
		base := ev.Holds(begins, ends)
		x.Counts[ev.Rule][p] += b2i[uint8](base)
		if k := x.Pause[p]; k >= 0 && w == x.First[p]+int32(x.Words[p])-1 {
			x.AtStop[ev.Rule][k] += b2i[int8](ev.Holds(begins, true)) - b2i[int8](base)
		}
		if p > from && w == x.First[p] && x.Pause[p-1] >= 0 {
			x.AtFrom[ev.Rule][x.Pause[p-1]] += b2i[int8](ev.Holds(true, ends)) - b2i[int8](base)
		}
	}
}

// Len is the number of phrases.
func (x *Index) Len() int { return len(x.Words) }

// MayStart reports whether a passage may begin with phrase p.
func (x *Index) MayStart(p int) bool { return p == 0 || x.End[p-1] != Split }

// StartsVerse reports whether phrase p begins a verse, StartsSurah whether it begins a surah.
func (x *Index) StartsVerse(p int) bool { return x.First[p] == 0 }

// StartsSurah reports whether phrase p begins a surah.
func (x *Index) StartsSurah(p int) bool { return p == 0 || x.End[p-1] == SurahEnd }

// Count returns the places of rule in the passage of the phrases from a to b, both included.
func (x *Index) Count(rule recite.RuleID, a, b int) int {
	n := 0
	for p := a; p <= b; p++ {
		n += int(x.Counts[rule][p])
	}
	if k := x.Pause[b]; k >= 0 {
		n += int(x.AtStop[rule][k])
	}
	if a > 0 && x.Pause[a-1] >= 0 {
		n += int(x.AtFrom[rule][x.Pause[a-1]])
	}
	return n
}
