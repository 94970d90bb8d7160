package site

import (
	"cmp"
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// TestSurahs reads every surah's file by the description in surah.go, and finds the text and the
// engine's events.
func TestSurahs(t *testing.T) {
	text, err := realText()
	if err != nil {
		t.Fatal(err)
	}
	s := newSource(t, nil)
	s.Engine = func() Engine { return recite.New(text) }
	files := mustMake(t, s)
	var c catalogue
	if err := json.Unmarshal(unzip(t, files[find(t, files, "data/catalogue.")]), &c); err != nil {
		t.Fatal(err)
	}
	engine, all := recite.New(text), 0
	for _, su := range text.Surahs {
		raw := unzip(t, files[find(t, files, fmt.Sprintf("data/s%03d.", su.Number))])
		got, events, lined := plain(t, text, su, raw, c)
		var want strings.Builder
		var have []recite.Event
		var lines []string
		for v := su.First; v < su.First+su.Count; v++ {
			want.WriteString(text.Verses[v].Text + "\n")
			own := engine.Verse(nil, v)
			slices.SortStableFunc(own, func(a, b recite.Event) int {
				return cmp.Or(cmp.Compare(a.Word, b.Word), cmp.Compare(a.Letter, b.Letter))
			})
			have = append(have, own...)
			for w, word := range text.Verses[v].Words {
				if word.Lined {
					lines = append(lines, fmt.Sprint(v, w))
				}
			}
		}
		if got != want.String() || string(raw[:4]) != "SUR\x04" || [32]byte(raw[4:36]) != sha256.Sum256([]byte(want.String())) {
			t.Errorf("surah %d: its text, or its head, is another", su.Number)
		}
		if !slices.Equal(events, have) || !slices.Equal(lined, lines) {
			t.Errorf("surah %d: the file has %d events and lines over %q, the engine %d and %q", su.Number, len(events), lined, len(have), lines)
		}
		all += len(events)
	}
	if all < 200_000 {
		t.Errorf("only %d events in all", all)
	}
}

// plain reads the file of su: its text, its events, and its words under a line as verse and word.
func plain(t *testing.T, text *mushaf.Text, su mushaf.Surah, raw []byte, c catalogue) (string, []recite.Event, []string) {
	t.Helper()
	var (
		got    []byte
		events []recite.Event
		lined  []string
	)
	alphabet := []rune(c.Alphabet)
	verse, from := su.First, 0 // from is where the verse begins in got
	for _, x := range raw[36:] {
		if int(x) < len(alphabet) {
			got = utf8.AppendRune(got, alphabet[x])
			if alphabet[x] == '\n' {
				verse, from = verse+1, len(got)
			}
			continue
		}
		for w, word := range text.Verses[verse].Words {
			if int(x) == len(alphabet)+len(c.Kinds) && int(word.End) == len(got)-from {
				lined = append(lined, fmt.Sprint(verse, w))
			}
			for l, letter := range word.Letters {
				if i := int(x) - len(alphabet); int(letter.End) == len(got)-from && i < len(c.Kinds) {
					k := c.Kinds[i]
					e := recite.Event{Verse: int32(verse), Word: uint16(w), Letter: uint8(l), Rule: recite.RuleID(k[0]), Count: uint8(k[1]),
						When: recite.When(k[2] & 3), Before: k[2]&4 > 0, Unwritten: k[2]&8 > 0, Detail: recite.Detail(k[2] >> 4), CauseLetter: -1}
					if len(k) == 5 {
						e.CauseWord, e.CauseLetter = int8(k[3]), int8(k[4])
					}
					if len(k) == 5 && k[3] == 0 {
						e.CauseLetter += int8(l)
					}
					events = append(events, e)
				}
			}
		}
	}
	return string(got), events, lined
}

// manyKinds is an engine that finds another kind of event in every verse.
type manyKinds struct{}

func (manyKinds) Verse(dst []recite.Event, v int) []recite.Event {
	return append(dst, recite.Event{Verse: int32(v), Count: uint8(v % 200), CauseLetter: -1})
}

func (m manyKinds) Reading(dst []recite.Event, v int, _ recite.Reading) []recite.Event {
	return m.Verse(dst, v)
}

func TestTooManyKinds(t *testing.T) {
	s := newSource(t, nil)
	s.Engine = func() Engine { return manyKinds{} }
	if files, ds := Make(s); files != nil || len(ds) != 1 || !strings.Contains(ds[0].String(), "200 kinds") {
		t.Errorf("%d files, %v", len(files), ds)
	}
}
