package recite

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"sutur/generator/internal/mushaf"
)

func load(t testing.TB) *mushaf.Text {
	t.Helper()
	tx, err := mushaf.Load(os.DirFS("../../../rules-content/text"))
	if err != nil {
		t.Fatal(err)
	}
	return tx
}

func show(e Event) string {
	c := "-"
	if e.Count > 0 {
		c = fmt.Sprint(e.Count)
	}
	return fmt.Sprintf("%d %d %s %s %s", e.Word+1, e.Letter+1, e.Rule, c, e.When)
}

func TestReading(t *testing.T) {
	tx := load(t)
	e := New(tx)
	for _, c := range []struct {
		ref         string
		join        []string
		stop        [2]int // verse offset in the range and word, from 1; 0 for none
		want, never []string
	}{
		{"78:1", nil, [2]int{},
			[]string{"1 2 ghunnah 2 always", "2 4 madd-muttasil 4 always", "2 7 madd-arid 4 stop"},
			[]string{"2 7 madd-tabii 2 join", "1 2 stop-form - stop"}},
		{"78:1", []string{"78:1"}, [2]int{}, []string{"2 7 madd-tabii 2 join"}, []string{"2 7 madd-arid 4 stop"}},
		{"78:14", nil, [2]int{},
			[]string{"1 3 noon-ikhfa 2 always", "4 2 madd-muttasil 4 always", "4 3 noon-ikhfa 2 join", "5 5 madd-iwad 2 stop"},
			[]string{"4 3 madd-iwad 2 stop"}},
		{"78:14", nil, [2]int{1, 4}, []string{"4 3 madd-iwad 2 stop"}, []string{"4 3 noon-ikhfa 2 join"}},
		{"112:2", nil, [2]int{}, []string{"1 3 heavy-lam - start", "1 1 hamzat-wasl - start"}, []string{"1 3 light-lam - join"}},
		{"112:2", []string{"112:1"}, [2]int{}, []string{"1 3 light-lam - join", "1 1 hamzat-wasl - join"}, []string{"1 3 heavy-lam - start"}},
		{"2:283", nil, [2]int{1, 15}, []string{"16 2 madd-badal 2 start"}, nil},
	} {
		t.Run(fmt.Sprint(c.ref, c.join, c.stop), func(t *testing.T) {
			rs, err := mushaf.ParseRefs(tx, c.ref)
			if err != nil {
				t.Fatal(err)
			}
			r := Reading{Join: map[int]bool{}, Stop: map[[2]int]bool{}}
			for _, j := range c.join {
				v, err := mushaf.ParseRefs(tx, j)
				if err != nil {
					t.Fatal(err)
				}
				r.Join[v[0].First] = true
			}
			if c.stop[0] > 0 {
				r.Stop[[2]int{rs[0].First + c.stop[0] - 1, c.stop[1] - 1}] = true
			}
			var got []string
			for _, ev := range e.Reading(nil, rs[0].First, r) {
				got = append(got, show(ev))
			}
			for _, w := range c.want {
				if !slices.Contains(got, w) {
					t.Errorf("%q is missing in\n%s", w, strings.Join(got, "\n"))
				}
			}
			for _, n := range c.never {
				if slices.Contains(got, n) {
					t.Errorf("%q does not hold in this reading", n)
				}
			}
		})
	}
}

// The signs that the print adds for the reading decide nothing: without them the engine finds the
// same, over the whole text.
func TestBlankTextGivesTheSameEvents(t *testing.T) {
	tx := load(t)
	e, b := New(tx), NewBlank(tx)
	changed := 0
	for v := range tx.Verses {
		x, y := e.Verse(nil, v), b.Verse(nil, v)
		if !slices.Equal(x, y) {
			t.Errorf("%d:%d differs without its signs", tx.Verses[v].Surah, tx.Verses[v].Ayah)
		}
		for w := range tx.Verses[v].Words {
			if !slices.Equal(tx.Verses[v].Words[w].Letters, b.t.Verses[v].Words[w].Letters) {
				changed++
			}
		}
	}
	if changed < 48000 {
		t.Errorf("only %d words lost a sign; most words carry one", changed)
	}
}

// Places where the length is accepted both ways say so, and no others of their rule do. The values
// are those of RULES.md: ayn in 19:1 and 42:2 four or six, the meem of 3:1 read on two or six,
// muttasil stopped on its hamza also six.
func TestLengthsBothWays(t *testing.T) {
	tx := load(t)
	e := New(tx)
	var letters []string
	final := 0
	for v := range tx.Verses {
		for _, ev := range e.Verse(nil, v) {
			ref := fmt.Sprintf("%d:%d.%d letter %d", tx.Verses[v].Surah, tx.Verses[v].Ayah, ev.Word+1, ev.Letter+1)
			switch {
			case ev.Rule == MaddLazimLetter && ev.Detail != NoDetail:
				letters = append(letters, ref+" "+ev.Detail.String())
			case ev.Rule == MaddMuttasil:
				l := tx.Verses[v].Words[ev.Word].Letters
				last := l[len(l)-1]
				ends := int(ev.CauseLetter) == len(l)-1 && !last.Has(mushaf.FathatanStacked|mushaf.FathatanOpen) && !(last.Has(mushaf.Fatha) && last.Has(mushaf.MeemHigh|mushaf.MeemLow))
				if int(ev.CauseLetter) != len(l)-1 && ev.Detail == SixAtStop { // a silent alif alone may follow the hamza
					for _, x := range l[ev.CauseLetter+1:] {
						ends = x.Rune == 'ا' && x.Has(mushaf.RoundZero)
					}
				}
				if (ev.Detail == SixAtStop) != ends {
					t.Errorf("%s: detail %q", ref, ev.Detail)
				}
				if ends {
					final++
				}
			}
		}
	}
	if want := []string{"3:1.1 letter 3 two-or-six", "19:1.1 letter 4 four-or-six", "42:2.1 letter 1 four-or-six"}; !slices.Equal(letters, want) {
		t.Errorf("opening letters with two lengths: %q, want %q", letters, want)
	}
	if final == 0 {
		t.Error("no muttasil ends its word")
	}
}

// Every rule acts somewhere, and every event lies within its word.
func TestEventsAreWithinTheirWords(t *testing.T) {
	tx := load(t)
	e := New(tx)
	var seen [NumRules]int
	for v := range tx.Verses {
		at := 0
		for _, ev := range e.Verse(nil, v) {
			w := tx.Verses[v].Words[ev.Word]
			if int(ev.Word) < at || int(ev.Letter) >= len(w.Letters) {
				t.Fatalf("%d:%d: %+v is out of place", tx.Verses[v].Surah, tx.Verses[v].Ayah, ev)
			}
			at = int(ev.Word)
			seen[ev.Rule]++
		}
	}
	for r, n := range seen {
		if n == 0 {
			t.Errorf("%s acts nowhere", RuleID(r))
		}
	}
}

func FuzzEngine(f *testing.F) {
	tx := load(f)
	for i := 0; i < len(tx.Verses); i += 311 {
		f.Add(tx.Verses[i].Text)
	}
	f.Add("\u0627\u0627 \u0671 \u0671\u0644 \u0670 \u06e5\u06e6")
	f.Add("\u0651\u0651\u0640\u0654")
	f.Fuzz(func(t *testing.T, s string) {
		v, _, bad := mushaf.ParseVerse(s)
		if bad != 0 {
			return
		}
		e := New(&mushaf.Text{Verses: []mushaf.Verse{v, v}})
		n := len(e.Verse(nil, 0)) + len(NewBlank(e.t).Verse(nil, 1))
		if most := 24 * (utf8.RuneCountInString(s) + 1); n > most {
			t.Fatalf("%d events in a text of %d letters and marks", n, most/24)
		}
	})
}

// TestAllocations: reading the whole text allocates nothing, once there is room for the events of
// the longest verse.
func TestAllocations(t *testing.T) {
	tx := load(t)
	e := New(tx)
	var buf []Event
	read := func() {
		for v := range tx.Verses {
			buf = e.Verse(buf[:0], v)
		}
	}
	read()
	if n := testing.AllocsPerRun(1, read); n != 0 {
		t.Errorf("%v allocations for the whole text, expected none", n)
	}
}

// BenchmarkFloor is the least that any reader of the text does: decode it rune by rune and look
// each rune up once.
func BenchmarkFloor(b *testing.B) {
	tx := load(b)
	var table [0x900]uint8
	for i := range table {
		table[i] = uint8(i)
	}
	b.ReportAllocs()
	sum := 0
	for b.Loop() {
		for i := range tx.Verses {
			for _, r := range tx.Verses[i].Text {
				sum += int(table[r])
			}
		}
	}
	if sum == 0 {
		b.Fatal("nothing was read")
	}
}

// BenchmarkWholeText finds every event of all 6,236 verses, under all conditions, at every word.
func BenchmarkWholeText(b *testing.B) {
	tx := load(b)
	e := New(tx)
	var buf []Event
	b.ReportAllocs()
	for b.Loop() {
		n := 0
		for v := range tx.Verses {
			buf = e.Verse(buf[:0], v)
			n += len(buf)
		}
		if n < 200000 {
			b.Fatalf("%d events", n)
		}
	}
}
