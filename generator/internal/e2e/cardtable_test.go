package e2e

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"sutur/generator/internal/build"
	"sutur/generator/internal/recite"
)

// TestCardTable holds app/print/rules.json against the engine: the letters that
// decide each rule, and a short word in which it acts, by reference. Run with
// UPDATE_GOLDEN=1 to write it anew.
func TestCardTable(t *testing.T) {
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	type entry struct {
		Letters string `json:"letters,omitempty"`
		At      [3]int `json:"at"` // surah, verse, word from 0
		size    int
	}
	table := map[recite.RuleID]*entry{}
	engine := recite.New(text)
	var events []recite.Event
	for i := len(text.Verses) - 1; i >= 0; i-- {
		v := &text.Verses[i]
		events = engine.Reading(events[:0], i, recite.Reading{})
		for _, e := range events {
			if e.Unwritten {
				continue
			}
			// The last juz is what children read first: a word from elsewhere only where it has none.
			size := len(v.Words[e.Word].Letters)
			if size < 3 {
				size += 10 // a word of two letters shows little of its rule
			}
			if k := int(e.Word) + int(e.CauseWord); k >= len(v.Words) || k < 0 {
				continue
			} else if k != int(e.Word) {
				size += len(v.Words[k].Letters)
			}
			if v.Juz != 30 {
				size += 1000
			}
			if x := table[e.Rule]; x == nil || size < x.size {
				table[e.Rule] = &entry{At: [3]int{v.Surah, v.Ayah, int(e.Word)}, size: size}
			}
		}
	}
	sets := recite.Sets()
	var b bytes.Buffer
	b.WriteString("{")
	for r := recite.RuleID(0); r < recite.NumRules; r++ {
		x := table[r]
		if x == nil {
			t.Errorf("%s has no word to show it", r)
			continue
		}
		x.Letters = sets[r]
		line, err := json.Marshal(x)
		if err != nil {
			t.Fatal(err)
		}
		sep := ","
		if r == 0 {
			sep = ""
		}
		fmt.Fprintf(&b, "%s\n%q:%s", sep, r, line)
	}
	b.WriteString("\n}\n")
	name := filepath.Join(root, build.SourceDir, "app/print/rules.json")
	if os.Getenv("UPDATE_GOLDEN") != "" {
		if err := os.WriteFile(name, b.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	got, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(got, b.Bytes()) {
		t.Errorf("%s is not what the engine says; write it anew with UPDATE_GOLDEN=1 and read the change", name)
	}
}
