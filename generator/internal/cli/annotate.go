package cli

import (
	"cmp"
	"encoding/json"
	"flag"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"sutur/generator/internal/build"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

const stopAccepted = "accepted is a verse and a word of it, both from 1, such as 78:1.2"

// runAnnotate prints the events of verses, one a line: verse, word, letter of the word, rule, count
// or "-", and when it holds. Words and letters count from 1.
func runAnnotate(e *env, args []string) error {
	fs := flag.NewFlagSet("annotate", flag.ContinueOnError)
	asJSON := fs.Bool("json", false, "")
	var stops, joins []string
	fs.Func("stop", "stop after a word, `REF.WORD`", func(s string) error { stops = append(stops, s); return nil })
	fs.Func("join", "read on past the end of `REF`", func(s string) error { joins = append(joins, s); return nil })
	refs, err := parse(fs, args)
	if err != nil {
		return err
	}
	text, err := build.Text(e.root)
	if err != nil {
		return err
	}
	ranges, err := mushaf.ParseRefs(text, strings.Join(refs, " "))
	if err != nil {
		return usagef("annotate: %s", err)
	}
	reading, err := parseReading(text, stops, joins)
	if err != nil {
		return err
	}
	print := printTabs
	if *asJSON {
		print = printJSON()
	}
	engine := recite.New(text)
	var events []recite.Event
	for _, r := range ranges {
		for v := r.First; v <= r.Last; v++ {
			events = engine.Reading(events[:0], v, reading)
			slices.SortStableFunc(events, func(a, b recite.Event) int {
				return cmp.Or(cmp.Compare(a.Word, b.Word), cmp.Compare(a.Letter, b.Letter))
			})
			for _, ev := range events {
				if err := print(e.stdout, &text.Verses[v], ev); err != nil {
					return fmt.Errorf("write the result: %w", err)
				}
			}
		}
	}
	if *asJSON {
		return closeJSON(e.stdout)
	}
	return nil
}

// printer writes one event of a verse.
type printer func(io.Writer, *mushaf.Verse, recite.Event) error

func printTabs(w io.Writer, v *mushaf.Verse, ev recite.Event) error {
	count := "-"
	if ev.Count > 0 {
		count = strconv.Itoa(int(ev.Count))
	}
	_, err := fmt.Fprintf(w, "%d:%d\t%d\t%d\t%s\t%s\t%s\n",
		v.Surah, v.Ayah, ev.Word+1, ev.Letter+1, ev.Rule, count, ev.When)
	return err
}

// place is an event as JSON. Count is null where nothing is held. Detail and Unwritten are told
// only where there is something to tell.
type place struct {
	Verse     string `json:"verse"`
	Word      int    `json:"word"`
	Letter    int    `json:"letter"`
	Rule      string `json:"rule"`
	Count     *int   `json:"count"`
	When      string `json:"when"`
	Detail    string `json:"detail,omitempty"`
	Unwritten bool   `json:"unwritten,omitempty"`
}

// printJSON returns a printer of the elements of one array, one a line. Every range of verses has
// events, so the array is never empty; closeJSON ends it.
func printJSON() printer {
	before := "[\n"
	return func(w io.Writer, v *mushaf.Verse, ev recite.Event) error {
		p := place{
			Verse: fmt.Sprintf("%d:%d", v.Surah, v.Ayah), Word: int(ev.Word) + 1, Letter: int(ev.Letter) + 1,
			Rule: ev.Rule.String(), When: ev.When.String(), Detail: ev.Detail.String(), Unwritten: ev.Unwritten,
		}
		if n := int(ev.Count); n > 0 {
			p.Count = &n
		}
		b, err := json.Marshal(p)
		if err != nil {
			return err
		}
		_, err = fmt.Fprintf(w, "%s%s", before, b)
		before = ",\n"
		return err
	}
}

func closeJSON(w io.Writer) error {
	_, err := io.WriteString(w, "\n]\n")
	return err
}

// parseReading reads where the reader stops within verses and which verse ends are read on past.
func parseReading(t *mushaf.Text, stops, joins []string) (recite.Reading, error) {
	r := recite.Reading{Join: map[int]bool{}, Stop: map[[2]int]bool{}}
	for _, j := range joins {
		ranges, err := mushaf.ParseRefs(t, j)
		if err != nil {
			return r, usagef("annotate: --join %s", err)
		}
		for _, g := range ranges {
			for v := g.First; v <= g.Last; v++ {
				if v == len(t.Verses)-1 {
					return r, usagef("annotate: --join %s reads on past the end of the text; accepted are verses before it", j)
				}
				r.Join[v] = true
			}
		}
	}
	for _, s := range stops {
		v, w, err := parseStop(t, s)
		if err != nil {
			return r, err
		}
		if w == len(t.Verses[v].Words)-1 && r.Join[v] {
			return r, usagef("annotate: --stop %s stops at a verse end that --join reads on past; accepted is one of the two", s)
		}
		r.Stop[[2]int{v, w}] = true
	}
	return r, nil
}

// parseStop reads REF.WORD and returns the verse's and the word's index.
func parseStop(t *mushaf.Text, s string) (verse, word int, err error) {
	ref, w, ok := strings.Cut(s, ".")
	n, err := strconv.ParseUint(w, 10, 16)
	if !ok || err != nil || strings.ContainsAny(ref, " ,") {
		return 0, 0, usagef("annotate: --stop %q is not a word of a verse; %s", s, stopAccepted)
	}
	ranges, err := mushaf.ParseRefs(t, ref)
	if err != nil {
		return 0, 0, usagef("annotate: --stop %s", err)
	}
	if len(ranges) != 1 || ranges[0].First != ranges[0].Last {
		return 0, 0, usagef("annotate: --stop %q names more than one verse; %s", s, stopAccepted)
	}
	verse = ranges[0].First
	if have := len(t.Verses[verse].Words); n < 1 || int(n) > have {
		return 0, 0, usagef("annotate: --stop %q: %s has words 1 to %d", s, ref, have)
	}
	return verse, int(n) - 1, nil
}
