package verify

import (
	"cmp"
	"fmt"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

type testCase struct {
	ref        string
	v, w       int // indices
	want, note string
}

// cases reads testdata/cases.txt; its head says what stands in it.
func cases(t *testing.T, tx *mushaf.Text) []testCase {
	t.Helper()
	raw, err := os.ReadFile("testdata/cases.txt")
	if err != nil {
		t.Fatal(err)
	}
	var out []testCase
	seen := map[string]bool{}
	for n, l := range strings.Split(strings.TrimSuffix(string(raw), "\n"), "\n") {
		if strings.HasPrefix(l, "#") {
			continue
		}
		f := strings.Split(l, "\t")
		if len(f) != 3 || f[2] == "" {
			t.Fatalf("cases.txt:%d: %d fields; reference, events and reason are expected", n+1, len(f))
		}
		var s, a, w int
		if k, err := fmt.Sscanf(f[0], "%d:%d.%d", &s, &a, &w); k != 3 || err != nil || f[0] != fmt.Sprintf("%d:%d.%d", s, a, w) {
			t.Fatalf("cases.txt:%d: %q is no word of a verse", n+1, f[0])
		}
		v := tx.Find(s, a)
		if v < 0 || w < 1 || w > len(tx.Verses[v].Words) {
			t.Fatalf("cases.txt:%d: %s is not in the text", n+1, f[0])
		}
		if seen[f[0]] {
			t.Fatalf("cases.txt:%d: %s comes twice", n+1, f[0])
		}
		seen[f[0]] = true
		out = append(out, testCase{f[0], v, w - 1, f[1], f[2]})
	}
	return out
}

// events writes the events of a word as cases.txt does: by letter, then rule, then when.
func events(es []recite.Event, word int) string {
	var mine []recite.Event
	for _, e := range es {
		if int(e.Word) == word {
			mine = append(mine, e)
		}
	}
	slices.SortFunc(mine, func(a, b recite.Event) int {
		return cmp.Or(cmp.Compare(a.Letter, b.Letter), strings.Compare(a.Rule.String(), b.Rule.String()), cmp.Compare(a.When, b.When))
	})
	var out []string
	for _, e := range mine {
		s := e.Rule.String() + "@" + strconv.Itoa(int(e.Letter)+1)
		if e.Count != 0 {
			s += "=" + strconv.Itoa(int(e.Count))
		}
		out = append(out, s+"/"+e.When.String())
	}
	return strings.Join(out, " ")
}

// Every event of every word of the table, and no other.
func TestCases(t *testing.T) {
	tx := load(t)
	for name, e := range map[string]Engine{"seeing": recite.New(tx), "blank": recite.NewBlank(tx)} {
		for _, c := range cases(t, tx) {
			if got := events(e.Verse(nil, c.v), c.w); got != c.want {
				t.Errorf("%s (%s): %s\n got %s\nwant %s", c.ref, name, c.note, got, c.want)
			}
		}
	}
}

// The table holds five words of every rule, or all of them where the text has fewer.
func TestCasesCoverEveryRule(t *testing.T) {
	tx := load(t)
	total, covered := map[string]int{}, map[string]int{}
	e := recite.New(tx)
	var buf []recite.Event
	for v := range tx.Verses {
		seen := map[string]bool{}
		buf = e.Verse(buf[:0], v)
		for _, x := range buf {
			if k := fmt.Sprint(x.Rule, " ", x.Word); !seen[k] {
				seen[k] = true
				total[x.Rule.String()]++
			}
		}
	}
	cs := cases(t, tx)
	if len(cs) < 250 {
		t.Errorf("%d words; 250 are expected", len(cs))
	}
	for _, c := range cs {
		seen := map[string]bool{}
		for _, f := range strings.Fields(c.want) {
			rule, _, _ := strings.Cut(f, "@")
			if _, ok := recite.ParseRule(rule); !ok {
				t.Errorf("%s: %q is no rule", c.ref, rule)
			}
			if !seen[rule] {
				seen[rule] = true
				covered[rule]++
			}
		}
	}
	for id := recite.RuleID(0); int(id) < recite.NumRules; id++ {
		if r := id.String(); covered[r] < min(5, total[r]) || total[r] == 0 {
			t.Errorf("%s: %d words in the table, %d in the text", r, covered[r], total[r])
		}
	}
}
