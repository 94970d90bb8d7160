package cli

import (
	"encoding/json"
	"fmt"
	"io"
	"strings"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/passage"
	"sutur/generator/internal/plan"
	"sutur/generator/internal/recite"
)

// reach says in a few words how the places were found, when not as asked.
func reach(r plan.Ranking) string {
	switch r.How {
	case plan.Fewer:
		return fmt.Sprintf("no lines there have as many as %d places; the most are %d", plan.Enough, r.Least)
	case plan.Again:
		return "its places were all read in the last days: they come again with other lines around them"
	case plan.Nowhere:
		return "there is no place of it there; look elsewhere"
	}
	return ""
}

func counts(list []plan.RuleCount) string {
	var s []string
	for _, c := range list {
		s = append(s, fmt.Sprintf("%s %d", c.Rule, c.Places))
	}
	return strings.Join(s, ", ")
}

func passagesText(w io.Writer, t *mushaf.Text, x *passage.Index, q plan.Query, r plan.Ranking) error {
	var b strings.Builder
	fmt.Fprintf(&b, "%s weighed\n", many(r.Seen, "passage"))
	if s := reach(r); s != "" {
		fmt.Fprintf(&b, "%s\n", s)
	}
	for i, p := range r.Passages {
		fmt.Fprintf(&b, "%2d. %s  %s, %s\n", i+1, plan.Spot(t, x, p), many(p.Words, "word"), many(p.Letters, "letter"))
		if len(q.Focus) > 0 {
			fmt.Fprintf(&b, "    %s of %s; ", many(p.Focus, "place"), names(q.Focus))
		} else {
			fmt.Fprint(&b, "    ")
		}
		fmt.Fprintf(&b, "%d of rules known; the child can read %d%% of all places; %s\n", p.Known, p.Share, apart(p.Distance))
		if len(p.Due) > 0 {
			fmt.Fprintf(&b, "    for review: %s\n", names(p.Due))
		}
		if p.Later > 0 {
			fmt.Fprintf(&b, "    not yet taught %d: %s\n", p.Later, counts(p.ByRule))
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func many(n int, noun string) string {
	if n == 1 {
		return "1 " + noun
	}
	return fmt.Sprintf("%d %ss", n, noun)
}

func names(list []recite.RuleID) string {
	var s []string
	for _, r := range list {
		s = append(s, r.String())
	}
	return strings.Join(s, ", ")
}

func apart(words int) string {
	switch {
	case words == 0:
		return "at the child's place"
	case words < 0:
		return many(-words, "word") + " before the child's place"
	}
	return many(words, "word") + " after the child's place"
}

// passageJSON is a passage as JSON. Words count from 1, both included.
type passageJSON struct {
	At       string         `json:"at"`
	From     [3]int         `json:"from"` // surah, verse, word
	To       [3]int         `json:"to"`
	Words    int            `json:"words"`
	Letters  int            `json:"letters"`
	Focus    int            `json:"focus"`
	Known    int            `json:"known"`
	Later    int            `json:"later"`
	ByRule   map[string]int `json:"laterByRule"`
	Due      []string       `json:"due"`
	Share    int            `json:"readablePercent"`
	Distance int            `json:"distanceWords"`
	Score    int            `json:"score"`
}

func passagesJSON(w io.Writer, t *mushaf.Text, x *passage.Index, q plan.Query, r plan.Ranking) error {
	out := struct {
		Weighed  int           `json:"weighed"`
		Least    int           `json:"leastPlaces"`
		Note     string        `json:"note"`
		Passages []passageJSON `json:"passages"`
	}{r.Seen, r.Least, reach(r), []passageJSON{}}
	for _, p := range r.Passages {
		a, b := &t.Verses[x.Verse[p.A]], &t.Verses[x.Verse[p.B]]
		j := passageJSON{
			At:   plan.Spot(t, x, p),
			From: [3]int{a.Surah, a.Ayah, int(x.First[p.A]) + 1}, To: [3]int{b.Surah, b.Ayah, int(x.First[p.B]) + int(x.Words[p.B])},
			Words: p.Words, Letters: p.Letters, Focus: p.Focus, Known: p.Known, Later: p.Later, ByRule: map[string]int{}, Due: []string{},
			Share: p.Share, Distance: p.Distance, Score: p.Score,
		}
		for _, c := range p.ByRule {
			j.ByRule[c.Rule.String()] = c.Places
		}
		for _, d := range p.Due {
			j.Due = append(j.Due, d.String())
		}
		out.Passages = append(out.Passages, j)
	}
	enc := json.NewEncoder(w)
	enc.SetIndent("", " ")
	return enc.Encode(out)
}
