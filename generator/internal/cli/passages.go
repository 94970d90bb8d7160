package cli

import (
	"flag"
	"fmt"
	"strconv"
	"strings"

	"sutur/generator/internal/build"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/plan"
	"sutur/generator/internal/recite"
)

// runPassages prints the best passages for a rule and a child, each with the figures that speak for
// it.
func runPassages(e *env, args []string) error {
	fs := flag.NewFlagSet("passages", flag.ContinueOnError)
	var q plan.Query
	for name, to := range map[string]*[]recite.RuleID{"focus": &q.Focus, "known": &q.Known, "due": &q.Due} {
		fs.Func(name, map[string]string{
			"focus": "find places of `RULE`", "known": "rules taught, `RULE,…`", "due": "rules due for review, `RULE,…`",
		}[name], func(s string) error { return addRules(to, s) })
	}
	near := fs.String("near", "1:1", "where the child is, `REF`")
	in := fs.String("in", "", "look only there, `REF` or juz N or page N")
	words := fs.String("words", "15-30", "words of a passage, `MIN-MAX`")
	places := fs.String("places", "", "places aimed at, `MIN-MAX`; lines get as short as that takes")
	fs.BoolVar(&q.Back, "back", false, "the child reads surah after surah backwards")
	best := fs.Int("best", plan.Best, "how many, `N`")
	asJSON := fs.Bool("json", false, "")
	rest, err := parse(fs, args)
	if err != nil {
		return err
	}
	if err := none("passages", rest); err != nil {
		return err
	}
	text, err := build.Text(e.root)
	if err != nil {
		return err
	}
	if err := readQuery(text, &q, *near, *in, *words, *best); err != nil {
		return err
	}
	if *places != "" {
		if q.Fewest, q.Most, err = span(*places); err != nil {
			return usagef("passages: --places %s, such as 4-7", err)
		}
		q.Short = min(shortest, q.Min)
	}
	x := build.Index(text)
	q.Level = len(q.Known)
	r := plan.Choose(x, q)
	if *asJSON {
		return passagesJSON(e.stdout, text, x, q, r)
	}
	return passagesText(e.stdout, text, x, q, r)
}

// addRules reads rule ids separated by commas.
func addRules(to *[]recite.RuleID, s string) error {
	for _, id := range strings.FieldsFunc(s, func(r rune) bool { return r == ',' || r == ' ' }) {
		r, ok := recite.ParseRule(id)
		if !ok {
			return fmt.Errorf("%q is no rule; accepted are %s", id, ruleIDs())
		}
		*to = append(*to, r)
	}
	return nil
}

func ruleIDs() string {
	var ids []string
	for r := range recite.RuleID(recite.NumRules) {
		ids = append(ids, r.String())
	}
	return strings.Join(ids, ", ")
}

func readQuery(t *mushaf.Text, q *plan.Query, near, in, words string, best int) error {
	at, err := mushaf.ParseRefs(t, near)
	if err != nil {
		return usagef("passages: --near %s", err)
	}
	q.Place = at[0].First
	if in != "" {
		if q.From, q.To, err = within(t, in); err != nil {
			return usagef("passages: --in %s", err)
		}
	}
	if q.Min, q.Max, err = span(words); err != nil {
		return usagef("passages: --words %s, such as 15-30", err)
	}
	if q.Best = best; best < 1 || best > 1000 {
		return usagef("passages: --best %d; accepted are 1 to 1000", best)
	}
	return nil
}

// shortest is how many words lines are shortened to for their places, as in the browser.
const shortest = 4

// span reads MIN-MAX.
func span(s string) (least, most int, err error) {
	from, to, ok := strings.Cut(s, "-")
	least, err1 := strconv.Atoi(from)
	most, err2 := strconv.Atoi(to)
	if !ok || err1 != nil || err2 != nil || least < 1 || most < least || most > 200 {
		return 0, 0, fmt.Errorf("%q; accepted are two numbers from 1 to 200", s)
	}
	return least, most, nil
}

// within reads "juz N", "page N" or verses.
func within(t *mushaf.Text, s string) (from, to int, err error) {
	for _, part := range []struct {
		name string
		most int
		of   func(*mushaf.Verse) int
	}{
		{"juz", 30, func(v *mushaf.Verse) int { return v.Juz }},
		{"page", 604, func(v *mushaf.Verse) int { return v.Page }},
	} {
		number, ok := strings.CutPrefix(s, part.name)
		if !ok {
			continue
		}
		n, err := strconv.Atoi(strings.TrimSpace(number))
		if err != nil || n < 1 || n > part.most {
			return 0, 0, fmt.Errorf("%q; accepted are %s 1 to %s %d", s, part.name, part.name, part.most)
		}
		from = -1
		for i := range t.Verses {
			if part.of(&t.Verses[i]) == n {
				if from < 0 {
					from = i
				}
				to = i
			}
		}
		return from, to, nil
	}
	ranges, err := mushaf.ParseRefs(t, s)
	if err != nil {
		return 0, 0, err
	}
	return ranges[0].First, ranges[len(ranges)-1].Last, nil
}
