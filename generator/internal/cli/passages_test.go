package cli

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"
)

// passages runs the command and returns what it prints.
func passages(t *testing.T, args string) string {
	t.Helper()
	code, out, errs := runHere(append([]string{"passages"}, strings.Fields(args)...)...)
	if code != 0 || errs != "" {
		t.Fatalf("passages %s: exit %d, errors %q", args, code, errs)
	}
	return out
}

// TestPassages: ten passages with their figures, the same in both forms.
func TestPassages(t *testing.T) {
	const args = "--focus noon-ikhfa --known ghunnah,qalqalah --near 78:1"
	var got struct {
		Weighed  int
		Passages []passageJSON
	}
	if err := json.Unmarshal([]byte(passages(t, args+" --json")), &got); err != nil {
		t.Fatal(err)
	}
	if len(got.Passages) != 10 || got.Weighed < 20000 {
		t.Fatalf("%d passages of %d", len(got.Passages), got.Weighed)
	}
	out := passages(t, args)
	for i, p := range got.Passages {
		if p.Focus < 4 || p.Words < 15 || p.Words > 30 {
			t.Errorf("passage %d has %d places in %d words", i+1, p.Focus, p.Words)
		}
		later := 0
		for _, n := range p.ByRule {
			later += n
		}
		if later != p.Later || p.Share != 100*(p.Focus+p.Known)/(p.Focus+p.Known+p.Later) {
			t.Errorf("passage %d does not add up: %+v", i+1, p)
		}
		if s := fmt.Sprintf("%2d. %s  %d words", i+1, p.At, p.Words); !strings.Contains(out, s) {
			t.Errorf("%q is not in\n%s", s, out)
		}
		if s := fmt.Sprintf("%d places of noon-ikhfa; %d of rules known; the child can read %d%% of all places", p.Focus, p.Known, p.Share); !strings.Contains(out, s) {
			t.Errorf("%q is not in\n%s", s, out)
		}
	}
}

func TestPassagesElsewhere(t *testing.T) {
	for _, c := range []struct{ args, has string }{
		{"--focus imalah", "no lines there have as many as 4 places; the most are 1"},
		{"--focus imalah", " 1. 11:4"},
		{"--focus imalah --in juz30", "there is no place of it there; look elsewhere"},
		{"--focus qalqalah --in 112-114 --best 1", " 1. 112:1-4  15 words"},
		{"--near 2:255 --in page42 --best 1", " 1. 2:25"},
		{"--focus madd-tabii --near 78:1 --in 78:24 --places 4-7", " 1. 78:24  6 words"}, // shortened
		{"--focus madd-tabii --near 113:1 --back --best 1", " 1. 113:"},
		{"--focus madd-tabii --near 113:1 --back --in 112 --best 1", "29 words after the child's place"}, // 23 of Al-Falaq, 6 of 112:1-2
		{"--near 114:1 --known ghunnah --due ghunnah --best 1", "for review: ghunnah"},
	} {
		t.Run(c.args, func(t *testing.T) {
			if out := passages(t, c.args); !strings.Contains(out, c.has) {
				t.Errorf("%q is not in\n%s", c.has, out)
			}
		})
	}
}

func TestPassagesRefused(t *testing.T) {
	for _, c := range []struct{ args, says string }{
		{"--focus ikhfa", `"ikhfa" is no rule; accepted are heavy-letter,`},
		{"--known ghunnah,x", `"x" is no rule`},
		{"--near 115:1", "--near"},
		{"--in juz31", "accepted are juz 1 to juz 30"},
		{"--in pageX", "accepted are page 1 to page 604"},
		{"--words 30", "such as 15-30"},
		{"--words 30-15", "such as 15-30"},
		{"--places 4", "such as 4-7"},
		{"--places 7-4", "such as 4-7"},
		{"--best 0", "accepted are 1 to 1000"},
		{"78:1", "one argument too many"},
	} {
		t.Run(c.args, func(t *testing.T) {
			code, out, errs := runHere(append([]string{"passages"}, strings.Fields(c.args)...)...)
			if code != 2 || out != "" || strings.Count(errs, "\n") != 1 || !strings.Contains(errs, c.says) {
				t.Errorf("exit %d, output %q, errors %q; want %q", code, out, errs, c.says)
			}
		})
	}
}
