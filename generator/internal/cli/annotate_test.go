package cli

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"sutur/generator/internal/build"
	"sutur/generator/internal/mushaf"
)

// lines runs annotate and returns its lines.
func lines(t *testing.T, args string) []string {
	t.Helper()
	code, out, errs := runHere(append([]string{"annotate"}, strings.Fields(args)...)...)
	if code != 0 || errs != "" {
		t.Fatalf("annotate %s: exit %d, errors %q", args, code, errs)
	}
	return strings.Split(strings.TrimSuffix(out, "\n"), "\n")
}

// TestAnnotate: what the issue of each row is, is common practice of the trade or in the rules the
// project states; the engine's own tests hold the rest.
func TestAnnotate(t *testing.T) {
	for _, c := range []struct{ args, has, not string }{
		// Ahad at the verse's end: the dal echoes at the stop, the tanween is heard only when
		// reading on.
		{"112:1", "112:1\t4\t3\tqalqalah\t-\tstop", "noon-"},
		// Read on, the tanween meets the hamzat wasl of the name Allah: no noon rule, no echo, a
		// light lam.
		{"112:1-2 --join 112:1", "112:2\t1\t3\tlight-lam\t-\tjoin", "112:1\t4\t"},
		// Min sharri: hidden noon, held for two counts, whatever comes at the ends.
		{"113:2", "113:2\t1\t2\tnoon-ikhfa\t2\tjoin", ""},
		// A stop after min takes the hidden noon away.
		{"113:2 --stop 113:2.1", "113:2\t", "noon-ikhfa"},
		// Whole surahs: the last word of the last verse.
		{"112", "112:4\t5\t", ""},
	} {
		t.Run(c.args, func(t *testing.T) {
			got := strings.Join(lines(t, c.args), "\n")
			if !strings.Contains(got, c.has) {
				t.Errorf("%q is not in\n%s", c.has, got)
			}
			if c.not != "" && strings.Contains(got, c.not) {
				t.Errorf("%q is in\n%s", c.not, got)
			}
		})
	}
}

// TestAnnotateForms: both forms say the same, in order, within the words' letters.
func TestAnnotateForms(t *testing.T) {
	text, err := build.Text("../../..")
	if err != nil {
		t.Fatal(err)
	}
	const args = "78-114 2:1-30"
	var places []place
	if err := json.Unmarshal([]byte(strings.Join(lines(t, args+" --json"), "\n")), &places); err != nil {
		t.Fatal(err)
	}
	tabs := lines(t, args)
	if len(tabs) != len(places) || len(tabs) < 1000 {
		t.Fatalf("%d lines and %d JSON places", len(tabs), len(places))
	}
	for i, p := range places {
		count := "-"
		if p.Count != nil {
			count = fmt.Sprint(*p.Count)
		}
		want := fmt.Sprintf("%s\t%d\t%d\t%s\t%s\t%s", p.Verse, p.Word, p.Letter, p.Rule, count, p.When)
		if tabs[i] != want {
			t.Fatalf("line %d: %q, but JSON says %q", i+1, tabs[i], want)
		}
		r, err := mushaf.ParseRefs(text, p.Verse)
		if err != nil {
			t.Fatal(err)
		}
		words := text.Verses[r[0].First].Words
		if p.Word < 1 || p.Word > len(words) || p.Letter < 1 || p.Letter > len(words[p.Word-1].Letters) {
			t.Errorf("%q is outside its word", tabs[i])
		}
	}
}

func FuzzStop(f *testing.F) {
	for _, s := range []string{"78:1.2", "112:1.5", "112.1", "1:1-2.1", ".", "1:1.", "999:1.1", "1:1.18446744073709551616", "٧٨:١.٢", "1:1.-1", "1:1 .1"} {
		f.Add(s)
	}
	text, err := build.Text("../../..")
	if err != nil {
		f.Fatal(err)
	}
	f.Fuzz(func(t *testing.T, s string) {
		v, w, err := parseStop(text, s)
		if err != nil {
			if strings.Contains(err.Error(), "\n") && !strings.Contains(s, "\n") {
				t.Errorf("more than one line: %q", err)
			}
			return
		}
		if v < 0 || v >= len(text.Verses) || w < 0 || w >= len(text.Verses[v].Words) {
			t.Errorf("%q is taken as word %d of verse %d", s, w, v)
		}
	})
}
