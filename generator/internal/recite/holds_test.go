package recite

import (
	"bytes"
	"encoding/json"
	"testing"

	"sutur/generator/internal/golden"
)

// TestHolds: the whole table. A row is when and the boundary it speaks of; its four answers are for
// a reader who stops nowhere, after the word, before it, on both sides. The same table is written
// for the browser's tests.
func TestHolds(t *testing.T) {
	type row struct {
		When       When `json:"when"`
		Before     bool `json:"before"`
		StopBefore bool `json:"stopBefore"`
		StopAfter  bool `json:"stopAfter"`
		Holds      bool `json:"holds"`
	}
	var b bytes.Buffer
	b.WriteByte('[')
	for i, c := range []struct {
		when   When
		before bool
		want   string
	}{
		{Always, false, "yyyy"},
		{Always, true, "yyyy"},
		{Join, false, "y-y-"},
		{Join, true, "yy--"},
		{Stop, false, "-y-y"},
		{Stop, true, "--yy"},
		{Start, false, "-y-y"},
		{Start, true, "--yy"},
	} {
		for k, want := range c.want {
			r := row{c.when, c.before, k >= 2, k%2 == 1, want == 'y'}
			if got := (&Event{When: r.When, Before: r.Before}).Holds(r.StopBefore, r.StopAfter); got != r.Holds {
				t.Errorf("%s, before %v; stops before %v, after %v: holds %v", r.When, r.Before, r.StopBefore, r.StopAfter, got)
			}
			line, err := json.Marshal(r)
			if err != nil {
				t.Fatal(err)
			}
			if i+k > 0 {
				b.WriteByte(',')
			}
			b.WriteByte('\n')
			b.Write(line)
		}
	}
	b.WriteString("\n]\n")
	golden.Check(t, "testdata/holds.json", b.Bytes())
}

// TestStartSpeaksOfBefore: a start is at the boundary before its word, a stop at the one after it.
func TestStartSpeaksOfBefore(t *testing.T) {
	tx := load(t)
	e := New(tx)
	var events []Event
	for v := range tx.Verses {
		events = e.Verse(events[:0], v)
		for _, ev := range events {
			if ev.When == Start && !ev.Before || ev.When == Stop && ev.Before {
				t.Errorf("%d:%d word %d: %s at a %s, before %v", tx.Verses[v].Surah, tx.Verses[v].Ayah, ev.Word+1, ev.Rule, ev.When, ev.Before)
			}
		}
	}
}
