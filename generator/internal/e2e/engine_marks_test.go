package e2e

import (
	"fmt"
	"image"
	"image/color"
	"slices"
	"testing"
	"time"

	"sutur/generator/internal/engine"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// inColour holds a picture against the letters of one word: each that is named has its colour and
// no ink, and no other has any of the colours.
func (p *page) inColour(what, word string, ends []int, want map[int]color.RGBA) (*image.RGBA, []box) {
	p.t.Helper()
	ink := p.colour("var(--ink)")
	im, boxes := p.atRest(word, ends)
	for i, b := range boxes {
		// At its edges a letter runs into the next.
		r := b.inset(min(1.5, (b.R-b.L)/5)).pixels()
		c, marked := want[i]
		if marked {
			got, left := count(im, r, c), count(im, r, ink)
			// One stroke of a pen a pixel wide, along a quarter of the letter's height.
			if least := int((b.B - b.T) / 4 * engine.Scale); got < least {
				p.t.Errorf("%s: %s letter %d: %d pixels of %v, want %d or more", what, word, i+1, got, c, least)
			}
			if left > got/10 {
				p.t.Errorf("%s: %s letter %d: %d pixels of ink are left beside %d of %v", what, word, i+1, left, got, c)
			}
		} else if len(want) > 0 && count(im, r, ink) == 0 {
			p.t.Errorf("%s: %s letter %d has no ink", what, word, i+1)
		}
		for _, other := range want {
			if n := count(im, r, other); n > 0 && (!marked || other != c) {
				p.t.Errorf("%s: %s letter %d has %d pixels of %v, the colour of another letter", what, word, i+1, n, other)
			}
		}
	}
	picture(p.t, fmt.Sprintf("%s-%s", what, p.engine), im)
	return im, boxes
}

// atRest is a picture of the page, and where the parts of a word are in it: a page may still move
// when it is first asked, as one that opens at a heading does.
func (p *page) atRest(word string, ends []int) (*image.RGBA, []box) {
	p.t.Helper()
	for deadline := time.Now().Add(patience); ; {
		before := p.boxes(word, ends)
		im := p.settled()
		if after := p.boxes(word, ends); slices.Equal(before, after) {
			return im, after
		}
		if time.Now().After(deadline) {
			p.t.Fatalf("%s does not come to rest\n%s", word, p.describe())
		}
	}
}

// oneMark is a letter to be marked, by rule and reference; letters and words count from 0.
type oneMark struct {
	what, rule, family   string
	surah, ayah, word, l int
}

// spots finds letters of every form that a colour has to reach.
func spots(t *testing.T, text *mushaf.Text) []oneMark {
	t.Helper()
	list := []oneMark{
		{"first letter, narrow", "hamzat-wasl", "wasl", 96, 1, 3, 0},
		{"letter within a word", "qalqalah", "qalqalah", 96, 1, 0, 1},
		{"last letter", "qalqalah", "qalqalah", 96, 1, 4, 2},
	}
	seen := map[string]bool{}
	reader := recite.New(text)
	tabii, _ := recite.ParseRule("madd-tabii")
	for v := range text.Verses {
		for _, e := range reader.Reading(nil, v, recite.Reading{}) {
			verse := &text.Verses[v]
			letters := verse.Words[e.Word].Letters
			if e.Rule != tabii || e.Unwritten || int(e.Letter)+1 == len(letters) || e.Letter == 0 {
				continue
			}
			own := []rune(verse.Text[letters[e.Letter].Start:letters[e.Letter].End])
			what := ""
			switch lam := letters[e.Letter-1].Rune; {
			case own[0] == 0x640 && slices.Contains(own, 0x670):
				what = "small alif on its own stretch"
			case own[0] == 0x627 && lam == 0x644:
				what = "alif joined with lam"
			}
			if what == "" || seen[what] || len(verse.Words) > 12 {
				continue
			}
			seen[what] = true
			list = append(list, oneMark{what, "madd-tabii", "madd", int(verse.Surah), int(verse.Ayah), int(e.Word), int(e.Letter)})
		}
	}
	if len(seen) != 2 {
		t.Fatalf("found only %v in the text", seen)
	}
	return list
}

// TestMarkColours marks letters one at a time: the mark is seen on its letter and on no other.
func TestMarkColours(t *testing.T) {
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	s := serve(t, "/", built(t))
	list := spots(t, text)
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		for _, x := range list {
			t.Run(x.what, func(t *testing.T) {
				p := p.in(t)
				v := text.Find(x.surah, x.ayah)
				p.lines(s, x.rule, x.surah, x.ayah, x.ayah)
				a := letter(text, v, x.word, x.l)
				p.tapAt(func() (float64, float64) {
					at := p.boxes(onLines(a), ends(text, v, x.word))[x.l]
					return (at.L + at.R) / 2, (at.T + at.B) / 2
				})
				p.inLarge(x.l)
				p.wait("the mark", enabled("undo"))
				p.inColour("mark "+x.what, onLines(a), ends(text, v, x.word), map[int]color.RGBA{x.l: p.colour("var(--c-" + x.family + ")")})
			})
		}
	})
}
