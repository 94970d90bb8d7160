package plan

import (
	"fmt"
	"strings"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/passage"
	"sutur/generator/internal/recite"
)

// Spot names the words of a passage: 78:1-5, or with words, from 1, where it begins or ends within a verse:
// 2:255.1-2:255.24.
func Spot(t *mushaf.Text, x *passage.Index, p Passage) string {
	a, b := &t.Verses[x.Verse[p.A]], &t.Verses[x.Verse[p.B]]
	from, to := fmt.Sprintf("%d:%d", a.Surah, a.Ayah), fmt.Sprintf("%d:%d", b.Surah, b.Ayah)
	switch {
	case x.First[p.A] > 0 || x.End[p.B] == passage.PauseEnd:
		return fmt.Sprintf("%s.%d-%s.%d", from, x.First[p.A]+1, to, x.First[p.B]+int32(x.Words[p.B]))
	case from == to:
		return from
	default:
		return fmt.Sprintf("%s-%d", from, b.Ayah)
	}
}

var doing = [...]string{Settle: "settle in", Teach: "new rule", Practise: "practise", DoReview: "review", ReadOn: "read on"}

// Table writes a course as lines of tab-separated columns: a line a session, then a line a rule.
func Table(t *mushaf.Text, x *passage.Index, units []Unit, course []Lines) []string {
	out := []string{"session\tweek\tday\twhat\trule marked\tlines\twords\tplaces\tfound\tknown\tlater\treadable"}
	var in, marked, sessions [recite.NumRules]int
	begun := map[recite.RuleID]int{}
	for i, s := range course {
		rule, places, found := "-", "-", "-"
		if s.Plan.Rule >= 0 {
			rule, places, found = recite.RuleID(s.Plan.Rule).String(), fmt.Sprint(s.Focus), fmt.Sprint(s.Found)
			marked[s.Plan.Rule]++
		}
		if s.Plan.Do == Teach {
			for _, r := range units[s.Plan.Unit].Rules {
				begun[r] = i + 1
			}
		}
		for r, n := range s.Places {
			if begun[recite.RuleID(r)] > 0 && n > 0 {
				in[r] += n
				sessions[r]++
			}
		}
		out = append(out, fmt.Sprintf("%d\t%d\t%d\t%s\t%s\t%s\t%d\t%s\t%s\t%d\t%d\t%d%%", i+1, s.Day/7+1, s.Day+1, doing[s.Plan.Do],
			rule, Spot(t, x, s.Passage), s.Words, places, found, s.Known, s.Later, s.Share))
	}
	out = append(out, "", "lesson\trule\tbegun in session\tsessions marked\tsessions read\tplaces practised")
	for _, s := range course {
		if s.Plan.Do != Teach {
			continue
		}
		for _, r := range units[s.Plan.Unit].Rules {
			out = append(out, strings.Join([]string{units[s.Plan.Unit].ID, r.String(), fmt.Sprint(begun[r]), fmt.Sprint(marked[r]),
				fmt.Sprint(sessions[r]), fmt.Sprint(in[r])}, "\t"))
		}
	}
	return out
}
