package verify

import (
	"strings"
	"testing"

	"sutur/generator/internal/poem"
	"sutur/generator/internal/recite"
)

// Every line's words stand in the line, or are named as its like, and give the number of letters
// that the poem or the trade states.
func TestPoemLines(t *testing.T) {
	sizes := map[recite.RuleID]int{
		recite.NoonIzhar: 6, recite.NoonIdghamGhunnah: 4, recite.NoonIdgham: 2, recite.NoonIqlab: 1, recite.NoonIkhfa: 15,
		recite.Ghunnah: 2, recite.MeemIkhfa: 1, recite.MeemIdgham: 1, recite.MeemIzhar: 26, recite.SunLam: 14,
		recite.MoonLam: 14, recite.MaddLazimLetter: 8, recite.HeavyLetter: 7, recite.Qalqalah: 5,
	}
	seen := map[recite.RuleID]bool{}
	for _, l := range poemLines {
		line, ok := poem.Find(l.id)
		if !ok {
			t.Errorf("there is no line %s", l.id)
		}
		if got := len([]rune(l.take(l.words))); got != sizes[l.rules[0]] {
			t.Errorf("%s: %d letters, %d expected for %s", l.id, got, sizes[l.rules[0]], l.rules[0])
		}
		for _, w := range strings.Fields(l.words) {
			// three lines name their letters by what other lines said: "its like", "the rest", "the
			// other letters"
			if lent := l.id == "tuhfah-21" || l.id == "tuhfah-22" || l.id == "jazari-68"; !lent && !strings.Contains(line.Text, w) {
				t.Errorf("%s has no %q", l.id, w)
			}
		}
		seen[l.rules[0]] = true
	}
	if len(seen) != len(sizes) {
		t.Errorf("%d rules have a line, %d expected", len(seen), len(sizes))
	}
}

// A set with one letter lost, one too many, or one changed is seen.
func TestPoemsSeeFaults(t *testing.T) {
	for _, l := range poemLines {
		id := l.rules[0]
		good := recite.Sets()[id]
		rs := []rune(good)
		extra := strings.Map(func(r rune) rune {
			if strings.ContainsRune(set(good), r) {
				return -1
			}
			return r
		}, alphabet)
		for name, bad := range map[string]string{"one lost": string(rs[1:]), "one more": good + string([]rune(extra)[0]), "none": ""} {
			t.Run(id.String()+" "+name, func(t *testing.T) {
				sets := map[recite.RuleID]string{}
				for k, v := range recite.Sets() {
					sets[k] = v
				}
				sets[id] = bad
				b := newBench(nil)
				poems(b, sets)
				if b.close()[0].Unexplained == 0 {
					t.Error("not seen")
				}
			})
		}
	}
}
